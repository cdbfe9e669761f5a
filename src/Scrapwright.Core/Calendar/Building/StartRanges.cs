namespace Scrapwright.Core.Calendar.Building;

/// <summary>Between which times each task can start, by links, windows and what is fixed, resources left out.</summary>
internal sealed class StartRanges
{
    private readonly ScheduleFacts facts;
    private readonly int[] latestEnd;

    /// <summary>Works them out.</summary>
    /// <param name="facts">The problem.</param>
    /// <param name="latestEnd">By task: it is over by then.</param>
    /// <param name="earliest">By task: it starts no earlier; null for what the problem says.</param>
    internal StartRanges(ScheduleFacts facts, int[] latestEnd, int[]? earliest = null)
    {
        this.facts = facts;
        this.latestEnd = latestEnd;
        Earliest = earliest is null ? [.. facts.Problem.Tasks.Select(t => t.EarliestStart)] : [.. earliest];
        Latest = [.. latestEnd.Select((end, task) => end - facts.Minutes[task])];
        for (var task = 0; task < facts.Count; task++)
        {
            if (facts.Fixed[task] == ScheduleFacts.None) continue;
            Earliest[task] = Math.Max(Earliest[task], facts.Fixed[task]);
            Latest[task] = Math.Min(Latest[task], facts.Fixed[task]);
        }

        Narrow();
    }

    /// <summary>By task. [min]</summary>
    internal int[] Earliest { get; }

    /// <summary>By task. [min]</summary>
    internal int[] Latest { get; }

    /// <summary>A task that cannot start at all, or none.</summary>
    internal int Stuck { get; private set; } = ScheduleFacts.None;

    /// <summary>The first start from a time on within a window, or never.</summary>
    internal static int UpIntoWindow(ScheduleFacts facts, int task, int from)
    {
        if (facts.Hours[task] == ScheduleFacts.None) return from;
        var windows = facts.Windows[facts.Hours[task]];
        var (set, minutes) = (facts.SetUpMinutes(task), facts.Minutes[task]);
        for (var w = Bench.FirstWindow(windows, from - 1); w < windows.Length; w++)
        {
            var start = Math.Max(from, windows[w].Start + set);
            if (start + minutes <= windows[w].End) return start;
        }

        return ScheduleFacts.Never;
    }

    /// <summary>The last start up to a time within a window, or below zero.</summary>
    internal static int DownIntoWindow(ScheduleFacts facts, int task, int to)
    {
        if (facts.Hours[task] == ScheduleFacts.None) return to;
        var windows = facts.Windows[facts.Hours[task]];
        var (set, minutes) = (facts.SetUpMinutes(task), facts.Minutes[task]);
        for (var w = Math.Min(Bench.FirstWindow(windows, to), windows.Length - 1); w >= 0; w--)
        {
            var start = Math.Min(to, windows[w].End - minutes);
            if (start >= windows[w].Start + set) return start;
        }

        return ScheduleFacts.None;
    }

    private void Narrow()
    {
        // Links without a limit settle in one round each way; limits go backwards through the order and may need more.
        for (var changed = true; changed && Stuck == ScheduleFacts.None;)
        {
            changed = false;
            foreach (var task in facts.Order) changed |= NarrowByLinks(task);
            for (var i = facts.Order.Length - 1; i >= 0; i--) changed |= NarrowByLinks(facts.Order[i]);
        }
    }

    private bool NarrowByLinks(int task)
    {
        var (earliest, latest) = (Earliest[task], Latest[task]);
        foreach (var link in facts.Into[task])
        {
            var end = Earliest[link.Before] + facts.Minutes[link.Before];
            earliest = Math.Max(earliest, end + link.Least);
            if (link.HasMost) latest = Math.Min(latest, Latest[link.Before] + facts.Minutes[link.Before] + link.Most);
        }

        foreach (var link in facts.OutOf[task])
        {
            latest = Math.Min(latest, Latest[link.After] - link.Least - facts.Minutes[task]);
            if (link.HasMost) earliest = Math.Max(earliest, Earliest[link.After] - link.Most - facts.Minutes[task]);
        }

        earliest = UpIntoWindow(facts, task, earliest);
        latest = DownIntoWindow(facts, task, latest);
        if (earliest > latest)
        {
            Stuck = task;
            (Earliest[task], Latest[task]) = (earliest, latest);
            return false;
        }

        if (earliest == Earliest[task] && latest == Latest[task]) return false;
        (Earliest[task], Latest[task]) = (earliest, latest);
        return true;
    }
}
