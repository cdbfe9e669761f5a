namespace Scrapwright.Core.Calendar.Building;

/// <summary>Places tasks one after the other, each as early as it fits (serial generation), in the order of a list as far as links allow.</summary>
internal sealed class ListPlacing
{
    // A chain with limits moves its head forward each time; this many moves are more than any window needs. Our own choice.
    private const int MostTries = 3000;

    private readonly ScheduleFacts facts;
    private readonly TaskGroups groups;
    private readonly StartRanges ranges;
    private readonly int[] open;
    private readonly int[] lower;
    private readonly long[] key;
    private readonly PriorityQueue<int, (long Key, int Group)> ready = new();
    private readonly int[] fixedTasks;

    /// <summary>An empty shop.</summary>
    internal ListPlacing(ScheduleFacts facts, StartRanges ranges)
    {
        this.facts = facts;
        this.ranges = ranges;
        groups = new TaskGroups(facts);
        open = new int[groups.Members.Length];
        key = new long[groups.Members.Length];
        lower = new int[facts.Count];
        Bench = new Bench(facts);
        Floor = new int[facts.Count];
        fixedTasks = [.. facts.Order.Where(t => facts.Fixed[t] != ScheduleFacts.None).OrderBy(t => facts.Fixed[t])];
    }

    /// <summary>The shop, with all that is placed.</summary>
    internal Bench Bench { get; }

    /// <summary>By task: it goes no earlier than this. [min]</summary>
    internal int[] Floor { get; }

    /// <summary>What is placed together.</summary>
    internal TaskGroups Groups => groups;

    /// <summary>The task that found no place in the last pass, or none.</summary>
    internal int Stuck { get; private set; } = ScheduleFacts.None;

    /// <summary>Places all tasks; false when one finds no place.</summary>
    /// <param name="keys">By task; the lowest that may is placed next, of a group its lowest counts.</param>
    internal bool Run(ReadOnlySpan<long> keys)
    {
        Bench.Clear();
        return PlaceFixed() && PlaceRest(keys);
    }

    /// <summary>Places a task just there; false when it does not fit.</summary>
    internal bool PlaceAt(int task, int start)
    {
        if (start < ranges.Earliest[task] || start > ranges.Latest[task] || Bench.EarliestStart(task, start) != start)
        {
            Stuck = task;
            return false;
        }

        Bench.Place(task, start);
        return true;
    }

    /// <summary>Places what has a fixed start; false when it does not fit.</summary>
    internal bool PlaceFixed()
    {
        Stuck = ScheduleFacts.None;
        foreach (var task in fixedTasks)
        {
            if (!PlaceAt(task, facts.Fixed[task])) return false;
        }

        return true;
    }

    /// <summary>Places what is not placed yet; false when one finds no place.</summary>
    internal bool PlaceRest(ReadOnlySpan<long> keys)
    {
        ready.Clear();
        for (var g = 0; g < open.Length; g++)
        {
            open[g] = groups.Before[g];
            key[g] = long.MaxValue;
            foreach (var task in groups.Members[g]) key[g] = Math.Min(key[g], keys[task]);
            if (open[g] == 0) ready.Enqueue(g, (key[g], g));
        }

        while (ready.TryDequeue(out var group, out _))
        {
            if (!PlaceGroup(groups.Members[group])) return false;
            foreach (var after in groups.After[group])
            {
                if (--open[after] == 0) ready.Enqueue(after, (key[after], after));
            }
        }

        return Bench.Placed == facts.Count;
    }

    /// <summary>Places those of a group that are not placed yet, as early as they fit; false, and none of them placed, when there is no place.</summary>
    /// <param name="group">One that follows only what is placed.</param>
    internal bool Place(int group) => PlaceGroup(groups.Members[group]);

    private bool PlaceGroup(int[] members)
    {
        foreach (var task in members) lower[task] = Math.Max(ranges.Earliest[task], Floor[task]);
        for (var tries = 0; tries < MostTries; tries++)
        {
            var before = Bench.Placed;
            var failed = ScheduleFacts.None;
            foreach (var task in members)
            {
                if (Bench.Start[task] == ScheduleFacts.None && !PlaceAfterOthers(task))
                {
                    failed = task;
                    break;
                }
            }

            if (failed == ScheduleFacts.None) return true;
            Stuck = failed;
            while (Bench.Placed > before) Bench.TakeBack();
            if (!HasMoved) return false;
        }

        return false;
    }

    /// <summary>After a failure: some task before was given a later place to try.</summary>
    private bool HasMoved { get; set; }

    private bool PlaceAfterOthers(int task)
    {
        HasMoved = false;
        var (earliest, latest, holds) = (lower[task], ranges.Latest[task], ScheduleFacts.None);
        foreach (var link in facts.Into[task])
        {
            if (Bench.Start[link.Before] == ScheduleFacts.None) continue;
            var end = Bench.Start[link.Before] + facts.Minutes[link.Before];
            earliest = Math.Max(earliest, end + link.Least);
            if (link.HasMost && end + link.Most < latest) (latest, holds) = (end + link.Most, link.Before);
        }

        foreach (var link in facts.OutOf[task])
        {
            // Only what is fixed or kept stands before what it follows.
            if (Bench.Start[link.After] == ScheduleFacts.None) continue;
            latest = Math.Min(latest, Bench.Start[link.After] - link.Least - facts.Minutes[task]);
            if (link.HasMost) earliest = Math.Max(earliest, Bench.Start[link.After] - link.Most - facts.Minutes[task]);
        }

        var start = Bench.EarliestStart(task, earliest);
        if (start <= latest)
        {
            Bench.Place(task, start);
            return true;
        }

        if (holds != ScheduleFacts.None && start < ScheduleFacts.Never && latest == Bench.Start[holds] + facts.Minutes[holds] + Most(holds, task))
        {
            lower[holds] = Math.Max(lower[holds], start - Most(holds, task) - facts.Minutes[holds]);
            HasMoved = lower[holds] > Bench.Start[holds] && facts.Fixed[holds] == ScheduleFacts.None;
        }

        return false;
    }

    private int Most(int before, int after)
    {
        var most = ScheduleFacts.Never;
        foreach (var link in facts.Into[after])
        {
            if (link.Before == before) most = Math.Min(most, link.Most);
        }

        return most;
    }
}
