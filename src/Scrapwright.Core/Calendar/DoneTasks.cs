using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>What of the work is done, and what of it still binds: clamps that hold, oil that soaks, finish that dries.</summary>
internal sealed class DoneTasks
{
    private const string Prefix = "done/";
    private readonly WorkTasks work;
    private readonly Dictionary<string, int?> ends = new(StringComparer.Ordinal);

    internal DoneTasks(WorkTasks work, ImmutableArray<DoneTask> done, WorkWindows windows)
    {
        this.work = work;
        var known = work.Tasks.Select(t => t.Id).ToHashSet(StringComparer.Ordinal);
        // A moment still to come is none at which something was over.
        foreach (var task in done.Where(d => known.Contains(d.Task))) ends[task.Task] = Math.Min(0, windows.MinuteOf(task.End));
        // Nobody said when what came before was done, only that it must have been: nothing waits for it any more.
        foreach (var earlier in work.WithAllBefore([.. ends.Keys])) ends.TryAdd(earlier, null);
    }

    /// <summary>True when a task is done.</summary>
    internal bool Contains(string task) => ends.ContainsKey(task);

    /// <summary>When a task may start at the earliest for the sake of those before it that are done. [min]</summary>
    internal int EarliestStart(string task) =>
        work.Links.Where(l => l.After == task && ends.GetValueOrDefault(l.Before) is not null).Select(l => ends[l.Before]!.Value + l.LeastMinutes).Append(0).Max();

    /// <summary>What a gift waits for: a task as it is, or what is left of the drying of one that is done.</summary>
    internal IEnumerable<ScheduleLast> Last(ScheduleLast last)
    {
        if (!Contains(last.Task)) yield return last;
        else if (Left(last.Task, last.WaitMinutes) is var left and > 0) yield return new(Prefix + last.Task, left);
    }

    /// <summary>Links from what is done to tasks that must follow soon. What should have followed already follows without a limit.</summary>
    internal IEnumerable<ScheduleLink> Links() => Soon().Select(l => new ScheduleLink(Prefix + l.Before, l.After, Left(l.Before, l.LeastMinutes), Left(l.Before, l.MostMinutes!.Value)));

    /// <summary>Tasks without work that stand for what is done: at the start, or until clamps come off.</summary>
    internal IEnumerable<ScheduleTask> Stubs(ClampPool clamps)
    {
        var needed = Soon().Select(l => l.Before).Concat(work.Gifts.SelectMany(g => g.Last).Where(l => Contains(l.Task) && Left(l.Task, l.WaitMinutes) > 0).Select(l => l.Task)).ToHashSet(StringComparer.Ordinal);
        foreach (var task in work.Tasks.Where(t => Contains(t.Id)))
        {
            if (needed.Contains(task.Id)) yield return new() { Id = Prefix + task.Id, Minutes = 0, FixedStart = 0 };
            if (task.Clamps is { } held && Left(task.Id, held.HeldMinutes) is var left and > 0)
                yield return new() { Id = $"{Prefix}clamps/{task.Id}", Minutes = left, FixedStart = 0, Needs = clamps.Needs(held with { HeldMinutes = 0 }) };
        }
    }

    private IEnumerable<ScheduleLink> Soon() => work.Links.Where(l => l.MostMinutes is { } most && Contains(l.Before) && !Contains(l.After) && Left(l.Before, most) > 0);

    // Minutes that are left of a wait.
    private int Left(string task, int wait) => ends[task] is { } end ? Math.Max(0, end + wait) : 0;
}
