using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Scrapwright.Core.Measures;
using Scrapwright.Planning.Cutting;

namespace Scrapwright.Benchmarks.Cutting;

/// <summary>Two-dimensional guillotine instances, one row each for every problem of the list.</summary>
internal static class BoardTableRows
{
    internal static void Run(string folder, string name)
    {
        Console.WriteLine();
        Console.WriteLine("| instance | problem | known | ours | bound | gap | seconds |");
        Console.WriteLine("|---|---|---:|---:|---:|---:|---:|");
        using var instances = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder, "instances-2d.json")));
        var rows = new List<(string Problem, bool IsKnown, bool IsProven, bool IsClose, double Seconds)>();
        foreach (var line in File.ReadLines(Path.Combine(folder, "optima-2d.csv")).Skip(1))
        {
            var cells = Cells(line);
            if (!$"{cells[0]} {cells[2]} {cells[3]}".Contains(name, StringComparison.OrdinalIgnoreCase)) continue;
            var problem = Read(instances.RootElement.GetProperty(cells[0]), cells[2], cells[3]);
            var before = Environment.CpuUsage.TotalTime;
            var layout = BoardSolver.Solve(problem, new BoardLimits());
            var seconds = (Environment.CpuUsage.TotalTime - before).TotalSeconds;
            var gap = 100.0 * (layout.Bound - layout.Value) / layout.Bound;
            var kind = cells[2].StartsWith('u') ? cells[3].StartsWith('f') ? "unlimited" : "unlimited, turned" : cells[2].Contains("one copy", StringComparison.Ordinal) ? "one of each" : "limited";
            var isKnown = long.TryParse(cells[7], CultureInfo.InvariantCulture, out var known) && known == layout.Value;
            rows.Add((kind, isKnown, layout.IsProven, gap <= 2, seconds));
            Console.WriteLine(FormattableString.Invariant($"| {cells[0]} | {kind} | {cells[7]} | {layout.Value} | {layout.Bound} | {gap:0.00} % | {seconds:0.00} |{(isKnown ? "" : " other than known |")}"));
        }

        Console.WriteLine();
        Console.WriteLine("| problem | rows | known value reached | proven | proven within 2 % | mean s | max s |");
        Console.WriteLine("|---|---:|---:|---:|---:|---:|---:|");
        foreach (var kind in rows.GroupBy(r => r.Problem))
        {
            Console.WriteLine(FormattableString.Invariant($"| {kind.Key} | {kind.Count()} | {kind.Count(r => r.IsKnown)} | {kind.Count(r => r.IsProven)} | {kind.Count(r => r.IsClose)} | {kind.Average(r => r.Seconds):0.00} | {kind.Max(r => r.Seconds):0.00} |"));
        }
    }

    private static BoardProblem Read(JsonElement instance, string problem, string orientation)
    {
        var plate = instance.GetProperty("plate");
        var parts = instance.GetProperty("items").EnumerateArray().Select(item => new BoardPart(
            Length.FromMillimetres(item.GetProperty("w").GetInt64()),
            Length.FromMillimetres(item.GetProperty("h").GetInt64()),
            item.GetProperty("value").GetInt64(),
            problem.StartsWith('u') ? null : problem.Contains("one copy", StringComparison.Ordinal) ? 1 : item.GetProperty("max_copies").GetInt32(),
            !orientation.StartsWith('f')));
        return new BoardProblem(Length.FromMillimetres(plate[0].GetInt64()), Length.FromMillimetres(plate[1].GetInt64()), [.. parts], Length.Zero);
    }

    private static ImmutableArray<string> Cells(string line)
    {
        var cells = ImmutableArray.CreateBuilder<string>();
        var cell = "";
        var isQuoted = false;
        foreach (var letter in line)
        {
            if (letter == '"') isQuoted = !isQuoted;
            else if (letter == ',' && !isQuoted)
            {
                cells.Add(cell);
                cell = "";
            }
            else cell += letter;
        }

        cells.Add(cell);
        return cells.ToImmutable();
    }
}
