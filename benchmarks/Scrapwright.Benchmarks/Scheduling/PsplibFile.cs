using System.Collections.Immutable;
using Scrapwright.Core.Calendar;

namespace Scrapwright.Benchmarks.Scheduling;

/// <summary>Reads a single-mode problem of the PSPLIB in its own form (.sm). Kolisch and Sprecher, PSPLIB – A project scheduling problem library, European Journal of Operational Research 96 (1997).</summary>
internal static class PsplibFile
{
    internal static ScheduleProblem Read(string path)
    {
        string[] lines = File.ReadAllLines(path);
        var horizon = Words(lines.Single(l => l.StartsWith("horizon", StringComparison.Ordinal)))[^1];
        var links = Rows(lines, "PRECEDENCE RELATIONS:", 2).SelectMany(row => row[3..].Select(after => new ScheduleLink($"{row[0]}", $"{after}")));
        var capacity = Rows(lines, "RESOURCEAVAILABILITIES:", 2)[0];
        var tasks = Rows(lines, "REQUESTS/DURATIONS:", 3).Select(row => new ScheduleTask
        {
            Id = $"{row[0]}",
            Minutes = row[2],
            Needs = [.. row[3..].Select((amount, i) => new ScheduleNeed($"R{i + 1}", amount)).Where(n => n.Amount > 0)],
        });
        return new ScheduleProblem
        {
            HorizonMinutes = int.Parse(horizon),
            Resources = [.. capacity.Select((c, i) => new ScheduleResource($"R{i + 1}", c))],
            Tasks = [.. tasks],
            Links = [.. links],
        };
    }

    private static ImmutableArray<int[]> Rows(string[] lines, string title, int skip) =>
    [
        .. lines.SkipWhile(l => !l.StartsWith(title, StringComparison.Ordinal)).Skip(skip).TakeWhile(l => !l.StartsWith('*')).Select(l => Words(l).Select(int.Parse).ToArray()),
    ];

    private static string[] Words(string line) => line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
}
