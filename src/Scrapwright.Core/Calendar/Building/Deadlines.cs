namespace Scrapwright.Core.Calendar.Building;

/// <summary>What values of levels say about when tasks have to be over.</summary>
internal static class Deadlines
{
    /// <summary>Ranges within which every schedule lies that is no worse on the levels up to one.</summary>
    internal static StartRanges Narrow(ScheduleFacts facts, StartRanges ranges, long[] values, int level)
    {
        var latestEnd = facts.LatestEnd.ToArray();
        for (var i = 0; i <= level; i++) Limit(facts, latestEnd, ranges, i, values[i]);
        return new StartRanges(facts, latestEnd, ranges.Earliest);
    }

    /// <summary>Brings latest ends forward to those of every schedule that has no more of a level.</summary>
    /// <param name="facts">The problem.</param>
    /// <param name="latestEnd">By task; changed.</param>
    /// <param name="ranges">When tasks can start at the earliest.</param>
    /// <param name="level">Number of the level.</param>
    /// <param name="value">Its value.</param>
    internal static void Limit(ScheduleFacts facts, int[] latestEnd, StartRanges ranges, int level, long value)
    {
        var (kind, priority) = facts.Levels[level];
        if (kind == ScheduleLevelKind.AllReady) LimitReady(facts, latestEnd, value);
        if (kind is ScheduleLevelKind.Lateness or ScheduleLevelKind.Slack) LimitOver(facts, latestEnd, ranges, kind, priority!.Value, value);
    }

    /// <summary>One delivery may have all the hours, or days, of its priority that the others do not need anyway.</summary>
    private static void LimitOver(ScheduleFacts facts, int[] latestEnd, StartRanges ranges, ScheduleLevelKind kind, int priority, long steps)
    {
        var step = LevelValues.Step(kind);
        var some = facts.Deliveries.Where(d => d.Priority == priority && d.By(kind) is not null)
            .Select(d => (d.Last, By: d.By(kind)!.Value, Least: LevelValues.Steps(LevelValues.Ready(facts, d, ranges.Earliest), d.By(kind)!.Value, step))).ToArray();
        var spare = steps - some.Sum(s => s.Least);
        foreach (var (last, by, least) in some)
        {
            foreach (var (task, wait) in last) latestEnd[task] = (int)Math.Min(latestEnd[task], by + ((least + spare) * step) - wait);
        }
    }

    private static void LimitReady(ScheduleFacts facts, int[] latestEnd, long ready)
    {
        for (var task = 0; task < facts.Count; task++) latestEnd[task] = (int)Math.Min(latestEnd[task], ready);

        foreach (var (task, wait) in facts.Deliveries.SelectMany(d => d.Last)) latestEnd[task] = (int)Math.Min(latestEnd[task], ready - wait);
    }
}
