using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>What is wrong with a problem before anybody tries to solve it.</summary>
public static class ScheduleProblemFaults
{
    // About nineteen years, so that sums of times stay whole 32-bit numbers. Our own choice.
    private const int MostMinutes = 10_000_000;

    // Amounts times minutes have to be whole 64-bit numbers. Our own choice.
    private const int MostAmount = 1_000_000;

    /// <summary>All faults, each with where, what was found and what was expected; empty when there are none. Later checks wait until names are right.</summary>
    /// <param name="problem">The problem.</param>
    public static ImmutableArray<ScheduleReason> Find(ScheduleProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ImmutableArray<ScheduleReason> names = [.. Names(problem)];
        if (!names.IsEmpty) return names;
        ImmutableArray<ScheduleReason> numbers = [.. Numbers(problem), .. TaskNumbers(problem), .. SetUps(problem)];
        if (!numbers.IsEmpty) return numbers;
        return [.. Circles(problem), .. FixedStarts(problem)];
    }

    private static IEnumerable<ScheduleReason> Names(ScheduleProblem problem)
    {
        var tasks = problem.Tasks.Select(t => t.Id).ToHashSet(StringComparer.Ordinal);
        var resources = problem.Resources.Select(r => r.Id).ToHashSet(StringComparer.Ordinal);
        var hours = problem.Hours.Select(h => h.Key).ToHashSet(StringComparer.Ordinal);
        var setUps = problem.SetUps.Select(s => s.Key).ToHashSet(StringComparer.Ordinal);
        return Twice(problem.Tasks.Select(t => t.Id), "task").Concat(Twice(problem.Resources.Select(r => r.Id), "resource"))
            .Concat(Twice(problem.Hours.Select(h => h.Key), "hours")).Concat(Twice(problem.SetUps.Select(s => s.Key), "setting"))
            .Concat(Twice(problem.Deliveries.Select(d => d.Id), "delivery")).Concat(Twice(problem.Before.Select(b => b.Task), "start before"))
            .Concat(problem.Tasks.SelectMany(t => Twice(t.Needs.Select(n => n.Resource), $"need of '{t.Id}'")))
            .Concat(Unknown(problem.Tasks.SelectMany(t => t.Needs.Select(n => (t.Id, n.Resource))), resources, "resource"))
            .Concat(Unknown(problem.Tasks.Where(t => t.Hours.Length > 0).Select(t => (t.Id, t.Hours)), hours, "hours"))
            .Concat(Unknown(problem.Tasks.Where(t => t.SetUp.Length > 0).Select(t => (t.Id, t.SetUp)), setUps, "setting"))
            .Concat(Unknown(problem.SetUps.SelectMany(s => new[] { (s.Key, s.Station), (s.Key, s.Maker) }), resources, "resource"))
            .Concat(Unknown(problem.Links.SelectMany(l => new[] { ($"link {l.Before} to {l.After}", l.Before), ($"link {l.Before} to {l.After}", l.After) }), tasks, "task"))
            .Concat(Unknown(problem.Deliveries.SelectMany(d => d.Last.Select(l => (d.Id, l.Task))), tasks, "task"));
    }

    private static IEnumerable<ScheduleReason> Twice(IEnumerable<string> names, string what) =>
        names.GroupBy(name => name, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => new ScheduleReason(g.Key, $"{g.Count()} times as {what}", "once"));

    private static IEnumerable<ScheduleReason> Unknown(IEnumerable<(string Where, string Name)> used, HashSet<string> known, string what) =>
        used.Where(u => !known.Contains(u.Name)).Select(u => new ScheduleReason(u.Where, $"{what} '{u.Name}'", $"the name of one of the problem's {(what == "hours" ? what : what + "s")}"));

    private static IEnumerable<ScheduleReason> Numbers(ScheduleProblem problem) =>
        Outside("horizon", problem.HorizonMinutes, 1, MostMinutes, "min")
            .Concat(Outside("step of all ready", problem.ReadyStepMinutes, 1, MostMinutes, "min"))
            .Concat(Outside("offset of all ready", problem.ReadyOffsetMinutes, 0, Math.Max(0, problem.ReadyStepMinutes - 1), "min"))
            .Concat(Outside("setting up before", problem.SetUpMinutesBefore ?? 0, 0, MostMinutes, "min"))
            .Concat(problem.Resources.SelectMany(r => Outside(r.Id, r.Capacity, 1, MostAmount, "of it")))
            .Concat(problem.SetUps.SelectMany(s => Outside(s.Key, s.Minutes, 0, MostMinutes, "min")))
            .Concat(problem.Links.SelectMany(LinkNumbers))
            .Concat(problem.Deliveries.SelectMany(DeliveryNumbers))
            .Concat(problem.Hours.SelectMany(WindowFaults));

    private static IEnumerable<ScheduleReason> LinkNumbers(ScheduleLink link)
    {
        var where = $"link {link.Before} to {link.After}";
        return Outside(where, link.LeastMinutes, 0, MostMinutes, "min at least")
            .Concat(link.MostMinutes is { } most ? Outside(where, most, link.LeastMinutes, MostMinutes, "min at most") : []);
    }

    private static IEnumerable<ScheduleReason> DeliveryNumbers(ScheduleDelivery delivery) =>
        Outside(delivery.Id, delivery.Priority, 1, 9, "as priority")
            .Concat(Outside(delivery.Id, delivery.Due ?? 0, -MostMinutes, MostMinutes, "min, due"))
            .Concat(Outside(delivery.Id, delivery.Wanted ?? 0, -MostMinutes, MostMinutes, "min, wanted"))
            .Concat(delivery.Last.SelectMany(l => Outside(delivery.Id, l.WaitMinutes, 0, MostMinutes, "min of waiting")));

    private static IEnumerable<ScheduleReason> WindowFaults(ScheduleHours hours)
    {
        var reached = 0;
        foreach (var window in hours.Windows)
        {
            if (window.Start < reached || window.End <= window.Start || window.End > MostMinutes)
            {
                yield return new ScheduleReason(hours.Key, $"a window from {window.Start} to {window.End}", $"one that begins at {reached} or later and ends after that, up to {MostMinutes}");
            }

            reached = Math.Max(reached, window.End);
        }
    }

    private static IEnumerable<ScheduleReason> TaskNumbers(ScheduleProblem problem)
    {
        var capacity = problem.Resources.ToDictionary(r => r.Id, r => r.Capacity, StringComparer.Ordinal);
        foreach (var task in problem.Tasks)
        {
            foreach (var fault in Outside(task.Id, task.Minutes, 0, MostMinutes, "min")) yield return fault;
            foreach (var fault in Outside(task.Id, task.EarliestStart, 0, MostMinutes, "min, earliest start")) yield return fault;
            foreach (var fault in Outside(task.Id, task.FixedStart ?? 0, 0, MostMinutes, "min, fixed start")) yield return fault;
            foreach (var need in task.Needs)
            {
                foreach (var fault in Outside(task.Id, need.Amount, 1, capacity[need.Resource], $"of {need.Resource}")) yield return fault;
                foreach (var fault in Outside(task.Id, need.HeldMinutes, 0, MostMinutes, $"min held {need.Resource}")) yield return fault;
            }
        }
    }

    private static IEnumerable<ScheduleReason> SetUps(ScheduleProblem problem)
    {
        foreach (var group in problem.Tasks.Where(t => t.SetUp.Length > 0).GroupBy(t => t.SetUp, StringComparer.Ordinal))
        {
            string[] hours = [.. group.Select(t => t.Hours).Distinct(StringComparer.Ordinal)];
            if (hours.Length > 1 || hours[0].Length == 0)
            {
                yield return new ScheduleReason(group.Key, $"tasks with hours {string.Join(", ", hours.Select(h => $"'{h}'"))}", "the same hours for all tasks of a setting, and not none");
            }

            foreach (var task in group.Where(t => t.Minutes == 0)) yield return new ScheduleReason(task.Id, "0 min", "at least 1 min for a task with a setting");
        }
    }

    private static IEnumerable<ScheduleReason> Circles(ScheduleProblem problem)
    {
        var open = problem.Tasks.ToDictionary(t => t.Id, _ => 0, StringComparer.Ordinal);
        foreach (var link in problem.Links) open[link.After]++;
        var after = problem.Links.ToLookup(l => l.Before, l => l.After, StringComparer.Ordinal);
        var free = new Queue<string>(open.Where(o => o.Value == 0).Select(o => o.Key));
        while (free.TryDequeue(out var task))
        {
            open.Remove(task);
            foreach (var next in after[task])
            {
                if (--open[next] == 0) free.Enqueue(next);
            }
        }

        if (open.Count > 0)
        {
            var named = string.Join(", ", open.Keys.Order(StringComparer.Ordinal).Take(5));
            yield return new ScheduleReason(open.Keys.Order(StringComparer.Ordinal).First(), $"a circle among {open.Count} tasks: {named}", "links that lead from first to last");
        }
    }

    private static IEnumerable<ScheduleReason> FixedStarts(ScheduleProblem problem)
    {
        var hours = problem.Hours.ToDictionary(h => h.Key, h => h.Windows, StringComparer.Ordinal);
        var setUps = problem.SetUps.ToDictionary(s => s.Key, s => s.Minutes, StringComparer.Ordinal);
        foreach (var task in problem.Tasks)
        {
            if (task.FixedStart is not { } start) continue;
            var begin = start - (task.SetUp.Length > 0 ? setUps[task.SetUp] : 0);
            var end = start + task.Minutes;
            if (task.Hours.Length > 0 && !hours[task.Hours].Any(w => w.Holds(begin, end)))
            {
                yield return new ScheduleReason(task.Id, $"fixed from {start} to {end}{(begin < start ? $", set up from {begin}" : "")}", $"within one window of '{task.Hours}'");
            }

            if (start < task.EarliestStart) yield return new ScheduleReason(task.Id, $"fixed at {start}", $"{task.EarliestStart} or later, its earliest start");
            if (end > problem.HorizonMinutes) yield return new ScheduleReason(task.Id, $"fixed from {start} to {end}", $"over by {problem.HorizonMinutes}, the horizon");
        }
    }

    private static IEnumerable<ScheduleReason> Outside(string where, int found, int least, int most, string what)
    {
        if (found < least || found > most) yield return new ScheduleReason(where, $"{found} {what}", $"{least} to {most}");
    }
}
