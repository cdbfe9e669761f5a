using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar.Building;

/// <summary>A problem without faults, with numbers in place of names.</summary>
internal sealed class ScheduleFacts
{
    /// <summary>Later than every time there is; sums of a few of these do not overflow.</summary>
    internal const int Never = 200_000_000;

    /// <summary>No setting, no hours.</summary>
    internal const int None = -1;

    /// <summary>Numbers a problem.</summary>
    /// <param name="problem">One in which <see cref="ScheduleProblemFaults"/> finds nothing.</param>
    internal ScheduleFacts(ScheduleProblem problem)
    {
        Problem = problem;
        Count = problem.Tasks.Length;
        var resources = Numbers(problem.Resources.Select(r => r.Id));
        var hours = Numbers(problem.Hours.Select(h => h.Key));
        var setUps = Numbers(problem.SetUps.Select(s => s.Key));
        Number = Numbers(problem.Tasks.Select(t => t.Id));
        Capacity = [.. problem.Resources.Select(r => r.Capacity)];
        Windows = [.. problem.Hours.Select(h => h.Windows.ToArray())];
        SetUps = [.. problem.SetUps.Select(s => new SetUpFacts(resources[s.Station], resources[s.Maker], s.Minutes))];
        Minutes = [.. problem.Tasks.Select(t => t.Minutes)];
        Fixed = [.. problem.Tasks.Select(t => t.FixedStart ?? None)];
        Hours = [.. problem.Tasks.Select(t => t.Hours.Length == 0 ? None : hours[t.Hours])];
        SetUp = [.. problem.Tasks.Select(t => t.SetUp.Length == 0 ? None : setUps[t.SetUp])];
        Needs = [.. problem.Tasks.Select(t => t.Needs.Select(n => new NeedFacts(resources[n.Resource], n.Amount, n.HeldMinutes)).ToArray())];
        var links = problem.Links.Select(l => new LinkFacts(Number[l.Before], Number[l.After], l.LeastMinutes, l.MostMinutes ?? Never)).ToArray();
        Into = Grouped(links, l => l.After);
        OutOf = Grouped(links, l => l.Before);
        Order = TopologicalOrder();
        Deliveries = [.. problem.Deliveries.Select(d => new DeliveryFacts([.. d.Last.Select(l => (Number[l.Task], l.WaitMinutes))], d.Due, d.Wanted, d.Priority))];
        LatestEnd = LatestEnds();
        SetUpHours = new int[SetUps.Length];
        Array.Fill(SetUpHours, None);
        for (var task = 0; task < Count; task++)
        {
            if (SetUp[task] != None) SetUpHours[SetUp[task]] = Hours[task];
        }

        var before = problem.Before.Where(b => Number.ContainsKey(b.Task)).ToDictionary(b => Number[b.Task], b => b.Start);
        Before = [.. Enumerable.Range(0, Count).Select(t => before.GetValueOrDefault(t, None))];
        Stay = [.. Enumerable.Range(0, Count).Select(StayOf)];
        Levels = [.. LevelKinds()];
    }

    /// <summary>The problem itself.</summary>
    internal ScheduleProblem Problem { get; }

    /// <summary>How many tasks there are.</summary>
    internal int Count { get; }

    /// <summary>The number of each task's id.</summary>
    internal Dictionary<string, int> Number { get; }

    /// <summary>By resource.</summary>
    internal int[] Capacity { get; }

    /// <summary>By hours, in order of time.</summary>
    internal ScheduleWindow[][] Windows { get; }

    /// <summary>By setting.</summary>
    internal SetUpFacts[] SetUps { get; }

    /// <summary>By setting: the hours of its tasks, or none where no task has it.</summary>
    internal int[] SetUpHours { get; }

    /// <summary>By task.</summary>
    internal int[] Minutes { get; }

    /// <summary>By task, or none.</summary>
    internal int[] Fixed { get; }

    /// <summary>By task, or none.</summary>
    internal int[] Hours { get; }

    /// <summary>By task, or none.</summary>
    internal int[] SetUp { get; }

    /// <summary>By task.</summary>
    internal NeedFacts[][] Needs { get; }

    /// <summary>By the task that follows.</summary>
    internal LinkFacts[][] Into { get; }

    /// <summary>By the task that is done first.</summary>
    internal LinkFacts[][] OutOf { get; }

    /// <summary>Tasks, each after all that it follows.</summary>
    internal int[] Order { get; }

    /// <summary>What has to be ready.</summary>
    internal DeliveryFacts[] Deliveries { get; }

    /// <summary>By task: the end that still leaves time before the horizon for what is held and waits.</summary>
    internal int[] LatestEnd { get; }

    /// <summary>By task: the start in the calendar before, or none.</summary>
    internal int[] Before { get; }

    /// <summary>By task: starts at which it lies in the window of the calendar before; none at all, from never, where that is no window any more, and null where it was not in that calendar.</summary>
    internal (int From, int To)?[] Stay { get; }

    /// <summary>The levels there are, in order.</summary>
    internal ImmutableArray<(ScheduleLevelKind Kind, int? Priority)> Levels { get; }

    /// <summary>Minutes of the setting a task needs; zero without one.</summary>
    internal int SetUpMinutes(int task) => SetUp[task] == None ? 0 : SetUps[SetUp[task]].Minutes;

    private static Dictionary<string, int> Numbers(IEnumerable<string> names) => names.Select((name, i) => (name, i)).ToDictionary(p => p.name, p => p.i, StringComparer.Ordinal);

    private LinkFacts[][] Grouped(LinkFacts[] links, Func<LinkFacts, int> task)
    {
        var byTask = links.ToLookup(task);
        return [.. Enumerable.Range(0, Count).Select(t => byTask[t].ToArray())];
    }

    private int[] TopologicalOrder()
    {
        var order = new List<int>(Count);
        var open = Into.Select(links => links.Length).ToArray();
        order.AddRange(Enumerable.Range(0, Count).Where(t => open[t] == 0));
        for (var i = 0; i < order.Count; i++)
        {
            foreach (var link in OutOf[order[i]])
            {
                if (--open[link.After] == 0) order.Add(link.After);
            }
        }

        return [.. order];
    }

    private int[] LatestEnds()
    {
        var ends = Needs.Select(needs => Problem.HorizonMinutes - needs.Select(n => n.Held).DefaultIfEmpty(0).Max()).ToArray();
        foreach (var (task, wait) in Deliveries.SelectMany(d => d.Last))
        {
            ends[task] = Math.Min(ends[task], Problem.HorizonMinutes - wait);
        }

        return ends;
    }

    private (int From, int To)? StayOf(int task)
    {
        var before = Before[task];
        if (before == None) return null;
        if (Hours[task] == None) return (before, before);
        var windows = Windows[Hours[task]];
        var w = Bench.FirstWindow(windows, before - 1);
        return w < windows.Length && windows[w].Start <= before ? (windows[w].Start, windows[w].End) : (Never, None);
    }

    private IEnumerable<(ScheduleLevelKind Kind, int? Priority)> LevelKinds()
    {
        foreach (var priority in Deliveries.Where(d => d.Due is not null).Select(d => d.Priority).Distinct().Order())
        {
            yield return (ScheduleLevelKind.Lateness, priority);
        }

        yield return (ScheduleLevelKind.AllReady, null);
        foreach (var priority in Deliveries.Where(d => d.Wanted is not null).Select(d => d.Priority).Distinct().Order())
        {
            yield return (ScheduleLevelKind.Slack, priority);
        }

        var isAfter = Problem.SetUpMinutesBefore is not null;
        if (isAfter) yield return (ScheduleLevelKind.MoreSetUps, null);
        if (!isAfter && SetUps.Length > 0) yield return (ScheduleLevelKind.SetUps, null);
        if (Problem.Before.Length > 0) yield return (ScheduleLevelKind.Moved, null);
        if (isAfter && SetUps.Length > 0) yield return (ScheduleLevelKind.SetUps, null);
    }
}
