namespace Scrapwright.Core.Calendar.Building;

/// <summary>What placed tasks are worth.</summary>
internal static class LevelValues
{
    /// <summary>The value of each level, in the problem's order.</summary>
    internal static long[] Of(ScheduleFacts facts, int[] start, long setUpMinutes)
    {
        var values = new long[facts.Levels.Length];
        for (var i = 0; i < values.Length; i++)
        {
            var (kind, priority) = facts.Levels[i];
            values[i] = kind switch
            {
                ScheduleLevelKind.Lateness => Lateness(facts, start, priority!.Value),
                ScheduleLevelKind.AllReady => AllReady(facts, start),
                ScheduleLevelKind.SetUps => setUpMinutes,
                _ => Moved(facts, start),
            };
        }

        return values;
    }

    /// <summary>Minutes of the settings that stand.</summary>
    internal static long SetUpMinutes(ScheduleFacts facts, Bench bench)
    {
        long minutes = 0;
        foreach (var (key, _, _) in bench.SetUps) minutes += facts.SetUps[key].Minutes;
        return minutes;
    }

    /// <summary>Below zero when the first values are better, level by level.</summary>
    internal static int Compare(long[] one, long[] other) => one.AsSpan().SequenceCompareTo(other);

    /// <summary>When a delivery is ready. [min]</summary>
    internal static int Ready(ScheduleFacts facts, DeliveryFacts delivery, int[] start)
    {
        var ready = 0;
        foreach (var (task, wait) in delivery.Last) ready = Math.Max(ready, start[task] + facts.Minutes[task] + wait);
        return ready;
    }

    /// <summary>Begun hours of lateness, 60 minutes each.</summary>
    internal static long HoursLate(int ready, int due) => ready <= due ? 0 : (ready - (long)due + 59) / 60;

    private static long Lateness(ScheduleFacts facts, int[] start, int priority)
    {
        long hours = 0;
        foreach (var delivery in facts.Deliveries)
        {
            if (delivery.Due is { } due && delivery.Priority == priority) hours += HoursLate(Ready(facts, delivery, start), due);
        }

        return hours;
    }

    private static long AllReady(ScheduleFacts facts, int[] start)
    {
        long last = 0;
        for (var task = 0; task < facts.Count; task++) last = Math.Max(last, start[task] + facts.Minutes[task]);
        foreach (var delivery in facts.Deliveries) last = Math.Max(last, Ready(facts, delivery, start));
        return last;
    }

    private static long Moved(ScheduleFacts facts, int[] start)
    {
        var moved = 0;
        for (var task = 0; task < facts.Count; task++)
        {
            if (facts.Before[task] != ScheduleFacts.None && facts.Before[task] != start[task]) moved++;
        }

        return moved;
    }
}
