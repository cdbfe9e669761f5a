using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar;

/// <summary>An evening as somebody reads it: the same work at the same setting that runs on is one line.</summary>
public static class WorkLines
{
    // More labels than these make no line: our own choice.
    private const int MostNamed = 3;

    /// <summary>The lines of an evening, in order of time; setting up stands before the tasks it is for.</summary>
    /// <param name="calendar">The calendar.</param>
    /// <param name="evening">One of its windows.</param>
    /// <param name="apart">Ids of tasks that are not joined with others, because they are being moved; default for none.</param>
    public static ImmutableArray<WorkLine> Of(WorkCalendar calendar, CalendarEvening evening, ImmutableArray<string> apart = default)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(evening);
        var ids = evening.Tasks.ToHashSet(StringComparer.Ordinal);
        var settings = calendar.Settings.Where(s => s.Setting.Minutes > 0 && s.Start >= evening.Start && s.Start < evening.End)
            .Select(s => new WorkLine(s.Start, s.Ready, s.Setting.Title, []));
        var tasks = calendar.Tasks.Where(t => ids.Contains(t.Task.Id)).Select(t => new WorkLine(t.Start, t.End, t.Task.Title, [t]));
        var lines = new List<WorkLine>();
        foreach (var line in settings.Concat(tasks).OrderBy(l => l.Start).ThenBy(l => !l.IsSetUp))
        {
            if (lines.Count > 0 && RunsOn(lines[^1], line) && IsApart(lines[^1], apart) == IsApart(line, apart)) lines[^1] = Joined(lines[^1], line);
            else lines.Add(line);
        }

        return [.. lines];
    }

    private static bool IsApart(WorkLine line, ImmutableArray<string> apart) => !apart.IsDefaultOrEmpty && line.Tasks.Any(t => apart.Contains(t.Task.Id));

    private static bool RunsOn(WorkLine before, WorkLine line) =>
        !before.IsSetUp && !line.IsSetUp && line.Start == before.End && before.Tasks[^1].Task is var one && line.Tasks[0].Task is var other
        && one.Setting.Length > 0 && one.Setting == other.Setting && one.Operation == other.Operation
        && (one.Operation != Operation.Finish || Coat(one) == Coat(other));

    private static WorkLine Joined(WorkLine before, WorkLine line)
    {
        ImmutableArray<CalendarTask> tasks = [.. before.Tasks, .. line.Tasks];
        return new(before.Start, line.End, Title([.. tasks.Select(t => t.Task)]), tasks);
    }

    private static string Title(ImmutableArray<WorkTask> tasks)
    {
        string[] named = [.. tasks.SelectMany(t => t.Gifts).Distinct()];
        var gifts = named.Length <= MostNamed ? string.Join(", ", named) : $"{named.Length} gifts";
        var word = ShopWords.Of(tasks[0].Operation);
        return tasks[0].Operation switch
        {
            Operation.Finish => $"{Coat(tasks[0]).Name}, {gifts}: {Coat(tasks[0]).Text}",
            Operation.GlueUp or Operation.FaceGlue => $"{word} {string.Join(", ", tasks.Select(t => t.Id[(t.Id.IndexOf('/') + 1)..]))}: {gifts}",
            _ => $"{word}: {tasks.Sum(t => t.Pieces.Length)} pieces, for {gifts}",
        };
    }

    // Titles of coats: their name, a comma, the gift, a colon, what to do.
    private static (string Name, string Text) Coat(WorkTask task)
    {
        var (comma, colon) = (task.Title.IndexOf(','), task.Title.IndexOf(": ", StringComparison.Ordinal));
        return comma < 0 || colon < comma ? (task.Title, "") : (task.Title[..comma], task.Title[(colon + 2)..]);
    }
}
