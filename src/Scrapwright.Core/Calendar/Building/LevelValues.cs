namespace Scrapwright.Core.Calendar.Building;

/// <summary>What placed tasks are worth.</summary>
internal static class LevelValues
{
    // Definition: minutes of an hour and of a day.
    private const int Hour = 60;
    private const int Day = 1440;

    /// <summary>The value of each level, in the problem's order.</summary>
    internal static long[] Of(ScheduleFacts facts, int[] start, long setUpMinutes)
    {
        var values = new long[facts.Levels.Length];
        for (var i = 0; i < values.Length; i++)
        {
            var (kind, priority) = facts.Levels[i];
            values[i] = kind switch
            {
                ScheduleLevelKind.Lateness or ScheduleLevelKind.Slack => Over(facts, start, kind, priority!.Value),
                ScheduleLevelKind.AllReady => AllReady(facts, start),
                ScheduleLevelKind.MoreSetUps => MoreSetUps(facts, setUpMinutes),
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

    /// <summary>How long one step is in which a level counts what is ready too late: an hour of lateness, a day of slack. [min]</summary>
    internal static int Step(ScheduleLevelKind kind) => kind == ScheduleLevelKind.Slack ? Day : Hour;

    /// <summary>Begun steps from when something should be ready until it is; zero when it is in time.</summary>
    internal static long Steps(int ready, int by, int step) => ready <= by ? 0 : (ready - (long)by + step - 1) / step;

    /// <summary>A time at which all is ready, up to a whole step.</summary>
    internal static long UpToStep(ScheduleFacts facts, long ready)
    {
        var (step, offset) = (facts.Problem.ReadyStepMinutes, facts.Problem.ReadyOffsetMinutes);
        return ready <= offset ? offset : offset + ((ready - offset + step - 1) / step * step);
    }

    /// <summary>Minutes of setting up beyond those of the calendar before.</summary>
    internal static long MoreSetUps(ScheduleFacts facts, long setUpMinutes) => Math.Max(0, setUpMinutes - facts.Problem.SetUpMinutesBefore!.Value);

    private static long Over(ScheduleFacts facts, int[] start, ScheduleLevelKind kind, int priority)
    {
        long steps = 0;
        foreach (var delivery in facts.Deliveries)
        {
            if (delivery.Priority == priority && delivery.By(kind) is { } by) steps += Steps(Ready(facts, delivery, start), by, Step(kind));
        }

        return steps;
    }

    private static long AllReady(ScheduleFacts facts, int[] start)
    {
        long last = 0;
        for (var task = 0; task < facts.Count; task++) last = Math.Max(last, start[task] + facts.Minutes[task]);
        foreach (var delivery in facts.Deliveries) last = Math.Max(last, Ready(facts, delivery, start));
        return UpToStep(facts, last);
    }

    private static long Moved(ScheduleFacts facts, int[] start)
    {
        var moved = 0;
        for (var task = 0; task < facts.Count; task++)
        {
            if (facts.Stay[task] is var (from, to) && (start[task] < from || start[task] > to)) moved++;
        }

        return moved;
    }
}
