namespace Scrapwright.Core.Calendar.Building;

/// <summary>What no schedule of a problem goes below, without a search.</summary>
internal static class LevelBounds
{
    /// <summary>By level. Each bound holds for every schedule, whatever its other levels.</summary>
    /// <param name="facts">The problem.</param>
    /// <param name="ranges">When each task can start.</param>
    /// <param name="isQuick">Leave out what there is only so much of: most of the time, and a bound that is less close.</param>
    internal static long[] Of(ScheduleFacts facts, StartRanges ranges, bool isQuick = false)
    {
        var refuted = new RefutedValues(facts, ranges);
        return [.. facts.Levels.Select((level, i) => level.Kind switch
        {
            ScheduleLevelKind.Lateness or ScheduleLevelKind.Slack => Refuted(i, LeastOver(facts, ranges, level.Kind, level.Priority!.Value), MostOver(facts, level.Kind, level.Priority.Value)),
            ScheduleLevelKind.AllReady => Refuted(i, AllReady(facts, ranges, isQuick), facts.Problem.HorizonMinutes),
            ScheduleLevelKind.MoreSetUps => LevelValues.MoreSetUps(facts, SetUps(facts)),
            ScheduleLevelKind.SetUps => SetUps(facts),
            _ => facts.Problem.Before.IsEmpty ? 0 : Moved(facts, ranges),
        })];

        long Refuted(int level, long bound, long most) => Whole(facts, level, isQuick ? bound : refuted.Bound(level, bound, most, []));
    }

    /// <summary>By level, for schedules that have the values of the levels before.</summary>
    /// <param name="facts">The problem.</param>
    /// <param name="ranges">When tasks can start.</param>
    /// <param name="values">By level.</param>
    /// <param name="bounds">Those known; raised.</param>
    internal static void Raise(ScheduleFacts facts, StartRanges ranges, long[] values, long[] bounds)
    {
        var refuted = new RefutedValues(facts, ranges);
        for (var i = 0; i < values.Length; i++)
        {
            if (values[i] > bounds[i] && facts.Levels[i].Kind is ScheduleLevelKind.Lateness or ScheduleLevelKind.AllReady or ScheduleLevelKind.Slack)
                bounds[i] = Whole(facts, i, refuted.Bound(i, bounds[i], values[i], values.AsSpan(0, i)));
        }
    }

    /// <summary>Minutes of setting up: each setting at least as often as its work needs windows.</summary>
    internal static long SetUps(ScheduleFacts facts)
    {
        long minutes = 0;
        for (var key = 0; key < facts.SetUps.Length; key++)
        {
            var tasks = Enumerable.Range(0, facts.Count).Where(t => facts.SetUp[t] == key).ToArray();
            minutes += (long)facts.SetUps[key].Minutes * LeastSetUps(facts, key, tasks);
        }

        return minutes;
    }

    /// <summary>How often a setting is set up at least for some of its tasks.</summary>
    internal static int LeastSetUps(ScheduleFacts facts, int key, IReadOnlyCollection<int> tasks)
    {
        if (tasks.Count == 0) return 0;
        if (!ShareOne(facts, tasks)) return 1;
        var longest = facts.Windows[facts.SetUpHours[key]].Max(w => w.Minutes) - facts.SetUps[key].Minutes;
        return longest <= 0 ? 1 : Math.Max(1, (tasks.Sum(t => facts.Minutes[t]) + longest - 1) / longest);
    }

    /// <summary>True when no two of the tasks can be worked at together.</summary>
    internal static bool ShareOne(ScheduleFacts facts, IReadOnlyCollection<int> tasks) => facts.Needs[tasks.First()]
        .Any(need => tasks.All(t => facts.Needs[t].Any(n => n.Resource == need.Resource && n.Amount * 2 > facts.Capacity[n.Resource])));

    private static long Whole(ScheduleFacts facts, int level, long bound) => facts.Levels[level].Kind == ScheduleLevelKind.AllReady ? LevelValues.UpToStep(facts, bound) : bound;

    private static long LeastOver(ScheduleFacts facts, StartRanges ranges, ScheduleLevelKind kind, int priority) => facts.Deliveries
        .Where(d => d.By(kind) is not null && d.Priority == priority)
        .Sum(d => LevelValues.Steps(LevelValues.Ready(facts, d, ranges.Earliest), d.By(kind)!.Value, LevelValues.Step(kind)));

    private static long MostOver(ScheduleFacts facts, ScheduleLevelKind kind, int priority) => facts.Deliveries
        .Where(d => d.By(kind) is not null && d.Priority == priority)
        .Sum(d => LevelValues.Steps(facts.Problem.HorizonMinutes, d.By(kind)!.Value, LevelValues.Step(kind)));

    private static long Moved(ScheduleFacts facts, StartRanges ranges) => Enumerable.Range(0, facts.Count)
        .Count(t => facts.Stay[t] is var (from, to) && (to < ranges.Earliest[t] || from > ranges.Latest[t]));

    private static long AllReady(ScheduleFacts facts, StartRanges ranges, bool isQuick)
    {
        var tails = PriorityRules.Tails(facts);
        long bound = 0;
        for (var task = 0; task < facts.Count; task++) bound = Math.Max(bound, ranges.Earliest[task] + tails[task]);
        for (var resource = 0; resource < facts.Capacity.Length && !isQuick; resource++)
        {
            bound = Math.Max(bound, new ResourceBound(facts, ranges, tails, resource).AllReady());
        }

        return bound;
    }
}
