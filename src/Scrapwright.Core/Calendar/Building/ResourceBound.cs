namespace Scrapwright.Core.Calendar.Building;

/// <summary>When all can be ready at the earliest, seen from one resource: work that cannot begin before a time, needs its share of the hours, and is followed by more.</summary>
internal sealed class ResourceBound
{
    // Pairs of a first time and a rest that are tried. Our own choice.
    private const int MostSteps = 24;

    private readonly ScheduleFacts facts;
    private readonly StartRanges ranges;
    private readonly int resource;
    private readonly int[] tasks;
    private readonly int[] amount;
    private readonly long[] rest;
    private readonly ScheduleWindow[] open;

    /// <summary>Gathers the resource's tasks.</summary>
    /// <param name="facts">The problem.</param>
    /// <param name="ranges">When tasks can start.</param>
    /// <param name="tails">By task: from its start until all is ready, at least.</param>
    /// <param name="resource">Number of the resource.</param>
    internal ResourceBound(ScheduleFacts facts, StartRanges ranges, long[] tails, int resource)
    {
        (this.facts, this.ranges, this.resource) = (facts, ranges, resource);
        tasks = [.. Enumerable.Range(0, facts.Count).Where(t => facts.Needs[t].Any(n => n.Resource == resource))];
        amount = new int[facts.Count];
        rest = new long[facts.Count];
        foreach (var task in tasks)
        {
            amount[task] = facts.Needs[task].Where(n => n.Resource == resource).Sum(n => n.Amount);
            rest[task] = tails[task] - facts.Minutes[task];
        }

        open = OpenHours();
    }

    /// <summary>Nothing is all ready before this. [min]</summary>
    internal long AllReady()
    {
        long bound = 0;
        if (tasks.Length == 0) return bound;
        var hasHeld = tasks.Any(t => Held(t) > 0);
        foreach (var from in Steps(tasks.Select(t => (long)ranges.Earliest[t])))
        {
            foreach (var after in Steps(tasks.Select(t => rest[t])))
            {
                var some = tasks.Where(t => ranges.Earliest[t] >= from && rest[t] >= after).ToArray();
                if (some.Length == 0) continue;
                bound = Math.Max(bound, InHours(some, (int)from) + after);
                if (hasHeld) bound = Math.Max(bound, WithHeld(some, from) + after);
            }
        }

        return bound;
    }

    /// <summary>Work and settings in the hours that are open.</summary>
    private long InHours(int[] some, int from)
    {
        // Settings before a first task may stand before it, so only those that more windows need count here; the rest is for the overload of hours.
        var work = some.Sum(t => (long)amount[t] * facts.Minutes[t]);
        foreach (var group in some.Where(t => facts.SetUp[t] != ScheduleFacts.None).GroupBy(t => facts.SetUp[t]))
        {
            var setUp = facts.SetUps[group.Key];
            if (setUp.Maker == resource) work += (long)setUp.Minutes * (LevelBounds.LeastSetUps(facts, group.Key, [.. group]) - 1);
        }

        return TimeAfter(from, (work + facts.Capacity[resource] - 1) / facts.Capacity[resource]);
    }

    /// <summary>Work and what is held afterwards, at any hour; what the last ones hold may go on when all is ready.</summary>
    private long WithHeld(int[] some, long from)
    {
        var capacity = facts.Capacity[resource];
        var work = some.Sum(t => (long)amount[t] * (facts.Minutes[t] + Held(t)));
        return from + ((work + capacity - 1) / capacity) - some.Max(Held);
    }

    private int Held(int task) => facts.Needs[task].Where(n => n.Resource == resource).Max(n => n.Held);

    /// <summary>The time at which so many open minutes have passed.</summary>
    private long TimeAfter(int from, long minutes)
    {
        if (minutes <= 0) return from;
        foreach (var window in open)
        {
            var begin = Math.Max(window.Start, from);
            if (begin >= window.End) continue;
            if (window.End - begin >= minutes) return begin + minutes;
            minutes -= window.End - begin;
        }

        return ScheduleFacts.Never;
    }

    /// <summary>All hours in which any of the tasks may be worked at, as windows apart from each other.</summary>
    private ScheduleWindow[] OpenHours()
    {
        if (tasks.Any(t => facts.Hours[t] == ScheduleFacts.None)) return [new ScheduleWindow(0, ScheduleFacts.Never)];
        var joined = new List<ScheduleWindow>();
        foreach (var window in tasks.Select(t => facts.Hours[t]).Distinct().SelectMany(h => facts.Windows[h]).OrderBy(w => w.Start))
        {
            if (joined.Count > 0 && window.Start <= joined[^1].End) joined[^1] = new ScheduleWindow(joined[^1].Start, Math.Max(joined[^1].End, window.End));
            else joined.Add(window);
        }

        return [.. joined];
    }

    private static long[] Steps(IEnumerable<long> values)
    {
        long[] all = [.. values.Distinct().Order()];
        return all.Length <= MostSteps ? all : [.. Enumerable.Range(0, MostSteps).Select(i => all[(int)((long)i * (all.Length - 1) / (MostSteps - 1))])];
    }
}
