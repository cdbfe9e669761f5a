namespace Scrapwright.Core.Calendar.Building;

/// <summary>
/// Whether hours hold the work that has to lie in them. For each resource and each sort of hours: all tasks that start no earlier than one time and are over by another, with the least settings they need, against
/// the minutes that are open between. What is overloaded cannot be kept; what is not may still be impossible.
/// </summary>
internal sealed class Overload
{
    private readonly ScheduleFacts facts;
    private readonly List<Load> loads = [];
    private readonly int[] stabbed;
    private readonly int[] stabs;
    private readonly int[] longest;
    private readonly int[] count;
    private readonly long[] keyWork;
    private readonly bool[] sharesOne;

    /// <summary>Gathers what shares resources and hours.</summary>
    internal Overload(ScheduleFacts facts)
    {
        this.facts = facts;
        stabbed = new int[facts.SetUps.Length];
        stabs = new int[facts.SetUps.Length];
        count = new int[facts.SetUps.Length];
        longest = [.. facts.SetUps.Select((s, key) => facts.SetUpHours[key] == ScheduleFacts.None ? 1 : Math.Max(1, facts.Windows[facts.SetUpHours[key]].Max(w => w.Minutes) - s.Minutes))];
        keyWork = new long[facts.SetUps.Length];
        sharesOne = [.. Enumerable.Range(0, facts.SetUps.Length).Select(SharesOne)];
        for (var resource = 0; resource < facts.Capacity.Length; resource++) AddLoads(resource);
    }

    /// <summary>True when tasks cannot all keep their ranges.</summary>
    internal bool IsIn(StartRanges ranges)
    {
        if (ranges.Stuck != ScheduleFacts.None) return true;
        foreach (var load in loads)
        {
            if (IsIn(load, ranges)) return true;
        }

        return false;
    }

    private void AddLoads(int resource)
    {
        int[] all = [.. Enumerable.Range(0, facts.Count).Where(t => facts.Minutes[t] > 0 && Amount(t, resource) > 0)];
        if (all.Length == 0) return;
        var seen = new HashSet<string>();
        foreach (var hours in all.Select(t => facts.Hours[t]).Distinct().Where(h => h != ScheduleFacts.None))
        {
            int[] tasks = [.. all.Where(t => facts.Hours[t] != ScheduleFacts.None && Lies(facts.Hours[t], hours))];
            if (seen.Add(string.Join(' ', tasks))) loads.Add(new Load(resource, tasks, [.. tasks.Select(t => Amount(t, resource))], new OpenMinutes(facts.Windows[hours])));
        }

        if (all.Any(t => facts.Hours[t] == ScheduleFacts.None)) loads.Add(new Load(resource, all, [.. all.Select(t => Amount(t, resource))], new OpenMinutes([new ScheduleWindow(0, ScheduleFacts.Never)])));
    }

    private int Amount(int task, int resource)
    {
        var amount = 0;
        foreach (var need in facts.Needs[task]) amount += need.Resource == resource ? need.Amount : 0;
        return amount;
    }

    /// <summary>True when every window of some hours lies in one of the others.</summary>
    private bool Lies(int some, int others)
    {
        if (some == others) return true;
        var windows = facts.Windows[others];
        return facts.Windows[some].All(w => Bench.FirstWindow(windows, w.Start) is var i && i < windows.Length && windows[i].Holds(w.Start, w.End));
    }

    private bool SharesOne(int key)
    {
        int[] tasks = [.. Enumerable.Range(0, facts.Count).Where(t => facts.SetUp[t] == key)];
        return tasks.Length > 0 && LevelBounds.ShareOne(facts, tasks);
    }

    private bool IsIn(Load load, StartRanges ranges)
    {
        var (tasks, capacity) = (load.Tasks, facts.Capacity[load.Resource]);
        var order = Enumerable.Range(0, tasks.Length).OrderBy(i => ranges.Latest[tasks[i]] + facts.Minutes[tasks[i]]).ToArray();
        foreach (var from in tasks.Select(t => ranges.Earliest[t]).Distinct().Order())
        {
            Array.Fill(stabbed, -1);
            Array.Clear(count);
            Array.Clear(stabs);
            Array.Clear(keyWork);
            long work = 0, firstSettings = 0;
            var opened = load.Open.Before(from);
            var inWindow = opened - load.Open.Before(load.Open.StartOfWindow(from));
            foreach (var i in order)
            {
                var task = tasks[i];
                if (ranges.Earliest[task] < from) continue;
                work += (long)load.Amounts[i] * facts.Minutes[task];
                AddSetting(task, load.Resource, ranges, ref work, ref firstSettings);
                var end = ranges.Latest[task] + facts.Minutes[task];

                // Settings of these tasks may stand before the first of them can start, but not before its window.
                var room = (capacity * (load.Open.Before(end) - opened)) + Math.Min(firstSettings, capacity * inWindow);
                if (work > room) return true;
            }
        }

        return false;
    }

    /// <summary>
    /// Settings the tasks so far need at least: tasks come in the order of their latest ends, so windows are counted that together meet the range of every one of them (the least number of points that stab all
    /// intervals; from memory), and windows that hold their work.
    /// </summary>
    private void AddSetting(int task, int resource, StartRanges ranges, ref long work, ref long firstSettings)
    {
        var key = facts.SetUp[task];
        if (key == ScheduleFacts.None || facts.SetUps[key].Maker != resource || facts.SetUps[key].Minutes == 0) return;
        var windows = facts.Windows[facts.Hours[task]];
        var minutes = facts.SetUps[key].Minutes;
        var needed = count[key];
        if (stabbed[key] < Bench.FirstWindow(windows, ranges.Earliest[task]))
        {
            stabbed[key] = Bench.FirstWindow(windows, ranges.Latest[task]);
            stabs[key]++;
        }

        keyWork[key] += facts.Minutes[task];
        needed = Math.Max(needed, stabs[key]);
        if (sharesOne[key]) needed = Math.Max(needed, (int)((keyWork[key] + longest[key] - 1) / longest[key]));
        if (count[key] == 0) firstSettings += minutes;
        work += (long)minutes * (needed - count[key]);
        count[key] = needed;
    }

    /// <summary>Tasks that need a resource in hours that are open.</summary>
    private sealed record Load(int Resource, int[] Tasks, int[] Amounts, OpenMinutes Open);
}
