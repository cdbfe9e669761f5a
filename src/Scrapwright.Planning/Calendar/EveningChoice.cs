using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar;

/// <summary>Which group of tasks comes next in an evening: of each setting the most urgent one is looked at, and by the evening's rule one of them is chosen.</summary>
internal sealed class EveningChoice
{
    // A minute in which nothing is done, and how far what is not ready yet stands back for every day. Our own choice, by measurement.
    private const double LostMinute = 0.02;
    private const double RanksOfDay = 3;

    // Even where rank does not count, it decides between alike.
    private const double LeastUrgency = 0.001;

    // An evening is not longer. [min] Our own choice.
    private const double LongEvening = 360;

    // Of each sort the most urgent one, and another where that has to wait.
    private const int EachSort = 2;

    // Definition: minutes of a day.
    private const int Day = 1440;

    private readonly ScheduleFacts facts;
    private readonly StartRanges ranges;
    private readonly ListPlacing placing;
    private readonly int[] place;
    private readonly int[] ready;
    private readonly int[] sort;
    private readonly int[] first;
    private readonly double[] firstRank;
    private readonly int[] waiting;
    private readonly int[] windowEnd;
    private readonly (int Group, int Start, int SetUp)[] found;
    private EveningRule rule = null!;
    private double[] rank = [];
    private int until;
    private int now;

    /// <summary>Nothing to choose from.</summary>
    internal EveningChoice(ScheduleFacts facts, StartRanges ranges, ListPlacing placing)
    {
        (this.facts, this.ranges, this.placing) = (facts, ranges, placing);
        var groups = placing.Groups.Members.Length;
        place = new int[groups];
        ready = new int[groups];
        Head = [.. placing.Groups.Members.Select(members => members[0])];
        sort = [.. Head.Select(task => facts.SetUp[task] == ScheduleFacts.None ? facts.SetUps.Length + 1 + facts.Hours[task] : facts.SetUp[task])];
        var sorts = facts.SetUps.Length + 1 + facts.Windows.Length;
        first = new int[sorts * EachSort];
        firstRank = new double[sorts];
        waiting = new int[facts.SetUps.Length];
        windowEnd = new int[facts.Windows.Length];
        found = new (int, int, int)[sorts * EachSort];
        Clear();
    }

    /// <summary>The groups that may be placed next, in any order.</summary>
    internal List<int> May { get; } = [];

    /// <summary>By group: its first task.</summary>
    private int[] Head { get; }

    /// <summary>Nothing to choose from any more.</summary>
    internal void Clear()
    {
        May.Clear();
        Array.Fill(place, ScheduleFacts.None);
    }

    /// <summary>A group all of whose links come from what is placed.</summary>
    internal void Add(int group)
    {
        place[group] = May.Count;
        May.Add(group);
        ready[group] = Ready(Head[group]);
    }

    /// <summary>A group that is placed, or may not be placed any more.</summary>
    internal void Remove(int group)
    {
        var at = place[group];
        place[May[^1]] = at;
        May[at] = May[^1];
        place[group] = ScheduleFacts.None;
        May.RemoveAt(May.Count - 1);
    }

    /// <summary>An evening begins.</summary>
    /// <param name="rule">How it is filled.</param>
    /// <param name="ranks">By task; the lowest is the most urgent.</param>
    /// <param name="from">When it begins. [min]</param>
    /// <param name="end">When the next one begins. [min]</param>
    internal void Begin(EveningRule rule, double[] ranks, int from, int end) => (this.rule, rank, now, until) = (rule, ranks, from, end);

    /// <summary>The group to be placed next, with the setting up that it brings, or null when nothing fits into the evening.</summary>
    internal (int Group, int SetUpMinutes)? Next()
    {
        ReadWindows();
        Gather();
        var count = Measure(out var begin);
        if (count == 0) return null;
        now = Math.Max(now, begin);
        var (best, bestCost) = (0, double.MaxValue);
        for (var i = 0; i < count; i++)
        {
            if (found[i].Start - found[i].SetUp > begin + rule.WaitMinutes) continue;
            var cost = Cost(found[i], begin);
            if (cost < bestCost) (best, bestCost) = (i, cost);
        }

        return (found[best].Group, found[best].SetUp);
    }

    private int Ready(int task)
    {
        if (placing.Bench.Start[task] != ScheduleFacts.None) return placing.Bench.Start[task];
        var ready = ranges.Earliest[task];
        foreach (var link in facts.Into[task])
        {
            var start = placing.Bench.Start[link.Before];
            if (start != ScheduleFacts.None) ready = Math.Max(ready, start + facts.Minutes[link.Before] + link.Least);
        }

        return ready;
    }

    private void ReadWindows()
    {
        for (var hours = 0; hours < windowEnd.Length; hours++)
        {
            var windows = facts.Windows[hours];
            var w = Bench.FirstWindow(windows, now);
            windowEnd[hours] = w < windows.Length ? windows[w].End : now;
        }
    }

    private int WindowEnd(int task) => facts.Hours[task] == ScheduleFacts.None ? now + Day : windowEnd[facts.Hours[task]];

    /// <summary>The most urgent of each sort, and the work that waits for each setting.</summary>
    private void Gather()
    {
        Array.Fill(first, ScheduleFacts.None);
        Array.Clear(waiting);
        foreach (var group in May)
        {
            if (ready[group] >= until) continue;
            var task = Head[group];
            var at = sort[group];
            var urgency = rank[task] + (Math.Max(0, ready[group] - now) * RanksOfDay / Day);
            if (first[at * EachSort] == ScheduleFacts.None || urgency < firstRank[at])
            {
                first[(at * EachSort) + 1] = first[at * EachSort];
                first[at * EachSort] = group;
                firstRank[at] = urgency;
            }
            else if (first[(at * EachSort) + 1] == ScheduleFacts.None)
            {
                first[(at * EachSort) + 1] = group;
            }

            if (facts.SetUp[task] is var key && key != ScheduleFacts.None && ready[group] < windowEnd[facts.Hours[task]])
                waiting[key] = Math.Min(waiting[key] + facts.Minutes[task], Math.Max(facts.Minutes[task], windowEnd[facts.Hours[task]] - now - facts.SetUps[key].Minutes));
        }
    }

    /// <summary>Where each of the first ones would start.</summary>
    private int Measure(out int begin)
    {
        var count = 0;
        begin = int.MaxValue;
        for (var i = 0; i < first.Length; i++)
        {
            var group = first[i];
            if (group == ScheduleFacts.None) continue;
            var task = Head[group];
            var start = placing.Bench.Start[task] == ScheduleFacts.None ? placing.Bench.EarliestStart(task, Math.Max(ready[group], placing.Floor[task])) : placing.Bench.Start[task];
            if (i % EachSort == 0 && start <= now + 1) i++;
            if (start >= until) continue;
            found[count] = (group, start, placing.Bench.Start[task] == ScheduleFacts.None ? placing.Bench.NewSetUpMinutes(task, start) : 0);
            begin = Math.Min(begin, start - found[count++].SetUp);
        }

        return count;
    }

    private double Cost((int Group, int Start, int SetUp) some, int begin)
    {
        var task = Head[some.Group];
        var cost = ((some.Start - some.SetUp - begin) * LostMinute) + ((rule.Urgency + LeastUrgency) * rank[task]);
        if (some.SetUp > 0) cost += rule.SetUp + (rule.ShareOfSetUp * some.SetUp / (waiting[facts.SetUp[task]] + some.SetUp));
        return cost + (rule.Closing * Math.Min(1, (WindowEnd(task) - begin) / LongEvening));
    }
}
