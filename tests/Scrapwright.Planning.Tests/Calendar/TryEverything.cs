using Scrapwright.Core.Calendar;

namespace Scrapwright.Planning.Tests.Calendar;

/// <summary>Tries every start of every task and of every setting, minute by minute, with rules of its own.</summary>
internal sealed class TryEverything
{
    private readonly ScheduleProblem problem;
    private readonly Dictionary<string, int[]> taken;
    private readonly Dictionary<string, int> starts = [];
    private long[]? best;

    private TryEverything(ScheduleProblem problem)
    {
        this.problem = problem;
        taken = problem.Resources.ToDictionary(r => r.Id, _ => new int[problem.HorizonMinutes + 1]);
    }

    /// <summary>The values of the best schedule there is, or null when there is none.</summary>
    internal static long[]? Best(ScheduleProblem problem)
    {
        var all = new TryEverything(problem);
        all.Place(0);
        return all.best;
    }

    private void Place(int number)
    {
        if (number == problem.Tasks.Length)
        {
            SetUp([.. Settings()], 0, []);
            return;
        }

        var task = problem.Tasks[number];
        for (var start = task.EarliestStart; start + task.Minutes <= problem.HorizonMinutes; start++)
        {
            if (!MayStart(task, start) || !Take(task, start, 1)) continue;
            starts[task.Id] = start;
            Place(number + 1);
            starts.Remove(task.Id);
            Take(task, start, -1);
        }
    }

    private bool MayStart(ScheduleTask task, int start)
    {
        var end = start + task.Minutes;
        if (task.FixedStart is { } only && only != start) return false;
        if (task.Hours.Length > 0 && !problem.Hours.Single(h => h.Key == task.Hours).Windows.Any(w => start >= w.Start && end <= w.End)) return false;
        if (problem.Deliveries.SelectMany(d => d.Last).Any(l => l.Task == task.Id && end + l.WaitMinutes > problem.HorizonMinutes)) return false;
        foreach (var link in problem.Links)
        {
            if (link.After == task.Id && starts.TryGetValue(link.Before, out var before) && !Follows(link, before + Minutes(link.Before), start)) return false;
            if (link.Before == task.Id && starts.TryGetValue(link.After, out var after) && !Follows(link, end, after)) return false;
        }

        return true;
    }

    private static bool Follows(ScheduleLink link, int end, int start) => start - end >= link.LeastMinutes && (link.MostMinutes is not { } most || start - end <= most);

    private int Minutes(string task) => problem.Tasks.Single(t => t.Id == task).Minutes;

    /// <summary>Takes what a task needs, or gives it back; false, and nothing taken, when there is too little.</summary>
    private bool Take(ScheduleTask task, int start, int sign)
    {
        if (sign > 0)
        {
            foreach (var need in task.Needs)
            {
                var end = start + task.Minutes + need.HeldMinutes;
                if (end > problem.HorizonMinutes) return false;
                for (var m = start; m < end; m++)
                {
                    if (taken[need.Resource][m] + need.Amount > Capacity(need.Resource)) return false;
                }
            }
        }

        foreach (var need in task.Needs)
        {
            for (var m = start; m < start + task.Minutes + need.HeldMinutes; m++) taken[need.Resource][m] += sign * need.Amount;
        }

        return true;
    }

    private int Capacity(string resource) => problem.Resources.Single(r => r.Id == resource).Capacity;

    /// <summary>One setting for each window that has tasks of it.</summary>
    private IEnumerable<(ScheduleSetUp SetUp, int From, int Latest, int End)> Settings()
    {
        foreach (var setUp in problem.SetUps)
        {
            var tasks = problem.Tasks.Where(t => t.SetUp == setUp.Key).ToArray();
            if (tasks.Length == 0) continue;
            foreach (var window in problem.Hours.Single(h => h.Key == tasks[0].Hours).Windows)
            {
                var some = tasks.Where(t => starts[t.Id] >= window.Start && starts[t.Id] + t.Minutes <= window.End).ToArray();
                if (some.Length > 0) yield return (setUp, window.Start, some.Min(t => starts[t.Id]) - setUp.Minutes, some.Max(t => starts[t.Id] + t.Minutes));
            }
        }
    }

    private void SetUp((ScheduleSetUp SetUp, int From, int Latest, int End)[] settings, int number, List<(ScheduleSetUp SetUp, int Start, int End)> standing)
    {
        if (number == settings.Length)
        {
            Consider(settings.Sum(s => s.SetUp.Minutes));
            return;
        }

        var (setUp, from, latest, end) = settings[number];
        for (var start = from; start <= latest; start++)
        {
            if (standing.Any(s => s.SetUp.Station == setUp.Station && s.Start < end && start < s.End)) continue;
            if (Enumerable.Range(start, setUp.Minutes).Any(m => taken[setUp.Maker][m] >= Capacity(setUp.Maker))) continue;
            for (var m = start; m < start + setUp.Minutes; m++) taken[setUp.Maker][m]++;
            standing.Add((setUp, start, end));
            SetUp(settings, number + 1, standing);
            standing.RemoveAt(standing.Count - 1);
            for (var m = start; m < start + setUp.Minutes; m++) taken[setUp.Maker][m]--;
        }
    }

    private bool IsSameWindow(ScheduledTask before, int start)
    {
        var hours = problem.Hours.FirstOrDefault(h => h.Key == problem.Tasks.Single(t => t.Id == before.Task).Hours);
        return hours is null ? start == before.Start : hours.Windows.Any(w => w.Start <= start && start <= w.End && w.Start <= before.Start && before.Start <= w.End);
    }

    private void Consider(long settingUp)
    {
        var ready = problem.Deliveries.ToDictionary(d => d, d => d.Last.Max(l => starts[l.Task] + Minutes(l.Task) + l.WaitMinutes));
        var values = problem.Deliveries.Where(d => d.Due is not null).GroupBy(d => d.Priority).OrderBy(g => g.Key)
            .Select(g => g.Sum(d => (long)Math.Ceiling(Math.Max(0, ready[d] - d.Due!.Value) / 60.0))).ToList();
        var all = starts.Max(s => Math.Max(s.Value + Minutes(s.Key), ready.Values.DefaultIfEmpty(0).Max()));
        while (all < problem.ReadyOffsetMinutes || (all - problem.ReadyOffsetMinutes) % problem.ReadyStepMinutes != 0) all++;
        values.Add(all);
        values.AddRange(problem.Deliveries.Where(d => d.Wanted is not null).GroupBy(d => d.Priority).OrderBy(g => g.Key)
            .Select(g => g.Sum(d => (long)Math.Ceiling(Math.Max(0, ready[d] - d.Wanted!.Value) / 1440.0))));
        if (problem.SetUpMinutesBefore is { } known) values.Add(Math.Max(0, settingUp - known));
        else values.Add(settingUp);
        if (problem.Before.Length > 0) values.Add(problem.Before.Count(b => starts.TryGetValue(b.Task, out var start) && !IsSameWindow(b, start)));
        if (problem.SetUpMinutesBefore is not null) values.Add(settingUp);
        if (best is null || values.ToArray().AsSpan().SequenceCompareTo(best) < 0) best = [.. values];
    }
}
