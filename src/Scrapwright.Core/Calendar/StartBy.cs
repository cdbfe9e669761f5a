using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>
/// The last moment at which a gift can be begun: going back from its day through what waits for what, each task as late as its hours allow. Other gifts, hands and clamps are not looked at, so a later beginning
/// is too late, and one just before it leaves room for nothing else.
/// </summary>
public static class StartBy
{
    /// <summary>When the first of a delivery's tasks has to start at the latest.</summary>
    /// <param name="problem">A problem without faults.</param>
    /// <param name="delivery">One of its deliveries.</param>
    /// <returns>[min]; null when it has no date, nothing is left to do, or it is too late already.</returns>
    public static int? Minute(ScheduleProblem problem, ScheduleDelivery delivery)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(delivery);
        if (delivery.Due is not { } due) return null;
        var tasks = problem.Tasks.ToDictionary(t => t.Id, StringComparer.Ordinal);
        var into = problem.Links.ToLookup(l => l.After, StringComparer.Ordinal);
        var limits = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var last in delivery.Last) limits[last.Task] = Math.Min(limits.GetValueOrDefault(last.Task, int.MaxValue), due - last.WaitMinutes);
        int? first = null;
        foreach (var task in FromTheEnd(into, [.. delivery.Last.Select(l => l.Task)]))
        {
            // What stands for something done is no beginning.
            if (tasks[task].Minutes == 0) continue;
            if (LatestStart(problem, tasks[task], limits[task]) is not { } start) return null;
            first = Math.Min(first ?? start, start);
            foreach (var link in into[task]) limits[link.Before] = Math.Min(limits.GetValueOrDefault(link.Before, int.MaxValue), start - link.LeastMinutes);
        }

        return first;
    }

    // Every task after all those that follow it on the way to the delivery.
    private static List<string> FromTheEnd(ILookup<string, ScheduleLink> into, ImmutableArray<string> last)
    {
        var order = new List<string>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        void Visit(string task)
        {
            if (!seen.Add(task)) return;
            foreach (var link in into[task]) Visit(link.Before);
            order.Add(task);
        }

        foreach (var task in last) Visit(task);
        order.Reverse();
        return order;
    }

    private static int? LatestStart(ScheduleProblem problem, ScheduleTask task, int limit)
    {
        if (task.Hours.Length == 0) return limit - task.Minutes;
        var setUp = problem.SetUps.FirstOrDefault(s => s.Key == task.SetUp)?.Minutes ?? 0;
        foreach (var window in problem.Hours.First(h => h.Key == task.Hours).Windows.Reverse())
        {
            var start = Math.Min(window.End, limit) - task.Minutes;
            if (start - setUp >= window.Start && start >= task.EarliestStart) return start;
        }

        return null;
    }
}
