using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>What the maker has marked in the calendar: tasks that are done, tasks that stay where they were put. By names of tasks, so that it outlives a plan that is made again.</summary>
public sealed record CalendarMarks
{
    /// <summary>Tasks that are done; each once.</summary>
    public ImmutableArray<DoneTask> Done { get; init; } = [];

    /// <summary>Tasks at a certain time; each once.</summary>
    public ImmutableArray<PinnedTask> Pinned { get; init; } = [];

    /// <summary>True when nothing is marked.</summary>
    public bool AreNone => Done.IsEmpty && Pinned.IsEmpty;

    /// <summary>The same with tasks done; what was marked before keeps its moment.</summary>
    /// <param name="tasks">Ids of the tasks.</param>
    /// <param name="end">When they were over.</param>
    public CalendarMarks WithDone(IEnumerable<string> tasks, DateTimeOffset end) =>
        this with { Done = [.. Done, .. tasks.Where(id => Done.All(d => d.Task != id)).Distinct().Select(id => new DoneTask(id, end))] };

    /// <summary>The same with tasks not done.</summary>
    /// <param name="tasks">Ids of the tasks.</param>
    public CalendarMarks WithoutDone(IEnumerable<string> tasks)
    {
        var ids = tasks.ToHashSet(StringComparer.Ordinal);
        return this with { Done = Done.RemoveAll(d => ids.Contains(d.Task)) };
    }

    /// <summary>The same with tasks at a certain time, in place of the one they had.</summary>
    /// <param name="pins">The tasks and their times.</param>
    public CalendarMarks WithPinned(IEnumerable<PinnedTask> pins)
    {
        PinnedTask[] now = [.. pins];
        return this with { Pinned = [.. Pinned.Where(p => now.All(n => n.Task != p.Task)), .. now] };
    }

    /// <summary>The same with tasks free to go anywhere.</summary>
    /// <param name="tasks">Ids of the tasks.</param>
    public CalendarMarks WithoutPinned(IEnumerable<string> tasks)
    {
        var ids = tasks.ToHashSet(StringComparer.Ordinal);
        return this with { Pinned = Pinned.RemoveAll(p => ids.Contains(p.Task)) };
    }
}
