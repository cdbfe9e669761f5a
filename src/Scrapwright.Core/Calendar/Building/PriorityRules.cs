namespace Scrapwright.Core.Calendar.Building;

/// <summary>Orders in which a list places tasks; the lowest key first. Priority rules of resource-constrained scheduling (from memory).</summary>
internal static class PriorityRules
{
    /// <summary>Several orders, each with keys by task.</summary>
    internal static IEnumerable<long[]> All(ScheduleFacts facts, StartRanges ranges)
    {
        var tail = Tails(facts);
        var followers = Followers(facts);
        var urgency = Urgency(facts);
        var late = LateByDue(facts, ranges, tail);
        yield return [.. late];
        yield return Keys(facts, t => (urgency[t], late[t]));
        yield return Keys(facts, t => (-tail[t], late[t]));
        yield return Keys(facts, t => (-followers[t], late[t]));
        yield return Keys(facts, t => (-(facts.Minutes[t] + facts.OutOf[t].Sum(l => (long)facts.Minutes[l.After])), late[t]));
        yield return Keys(facts, t => (ranges.Earliest[t], late[t]));
        if (facts.SetUps.Length == 0) yield break;
        var waves = new DeliveryWaves(facts, late);
        yield return waves.Keys(place => System.Numerics.BitOperations.Log2((uint)place + 1));
        for (var size = 2; ; size *= 2)
        {
            var most = size;
            yield return waves.Keys(place => place / most);
            if (size >= facts.Deliveries.Length) yield break;
        }
    }

    /// <summary>By task: what comes after its start at least, waiting included. [min]</summary>
    internal static long[] Tails(ScheduleFacts facts)
    {
        var tail = new long[facts.Count];
        foreach (var (task, wait) in facts.Deliveries.SelectMany(d => d.Last)) tail[task] = Math.Max(tail[task], wait);
        for (var i = facts.Count - 1; i >= 0; i--)
        {
            var task = facts.Order[i];
            foreach (var link in facts.OutOf[task]) tail[task] = Math.Max(tail[task], link.Least + tail[link.After]);
            tail[task] += facts.Minutes[task];
        }

        return tail;
    }

    /// <summary>By task: the latest start that has its deliveries ready when they are due, dates counted from the most urgent that wait for it.</summary>
    /// <param name="facts">The problem.</param>
    /// <param name="ranges">When tasks can start.</param>
    /// <param name="tail">By task: what comes after its start.</param>
    /// <param name="later">By delivery: its date is taken to be so much later; null for none. [min]</param>
    internal static long[] LateByDue(ScheduleFacts facts, StartRanges ranges, long[] tail, long[]? later = null)
    {
        var late = new long[facts.Count];
        for (var task = 0; task < facts.Count; task++) late[task] = Math.Min(ranges.Latest[task], facts.Problem.HorizonMinutes - tail[task]);
        for (var d = 0; d < facts.Deliveries.Length; d++)
        {
            if (facts.Deliveries[d].Due is not { } due) continue;
            foreach (var (task, wait) in facts.Deliveries[d].Last) late[task] = Math.Min(late[task], due + (later?[d] ?? 0) - wait - facts.Minutes[task]);
        }

        for (var i = facts.Count - 1; i >= 0; i--)
        {
            var task = facts.Order[i];
            foreach (var link in facts.OutOf[task]) late[task] = Math.Min(late[task], late[link.After] - link.Least - facts.Minutes[task]);
        }

        return late;
    }

    /// <summary>By task: the lowest priority number of the dated deliveries that wait for it.</summary>
    private static int[] Urgency(ScheduleFacts facts)
    {
        var urgency = new int[facts.Count];
        Array.Fill(urgency, int.MaxValue);
        foreach (var delivery in facts.Deliveries)
        {
            foreach (var (task, _) in delivery.Last) urgency[task] = Math.Min(urgency[task], delivery.Priority);
        }

        for (var i = facts.Count - 1; i >= 0; i--)
        {
            var task = facts.Order[i];
            foreach (var link in facts.OutOf[task]) urgency[task] = Math.Min(urgency[task], urgency[link.After]);
        }

        return urgency;
    }

    /// <summary>By task: how many follow it, near and far.</summary>
    private static int[] Followers(ScheduleFacts facts)
    {
        var words = (facts.Count + 63) / 64;
        var reached = new ulong[facts.Count][];
        var count = new int[facts.Count];
        for (var i = facts.Count - 1; i >= 0; i--)
        {
            var task = facts.Order[i];
            var mine = reached[task] = new ulong[words];
            foreach (var link in facts.OutOf[task])
            {
                mine[link.After / 64] |= 1UL << (link.After % 64);
                for (var w = 0; w < words; w++) mine[w] |= reached[link.After][w];
            }

            count[task] = mine.Sum(System.Numerics.BitOperations.PopCount);
        }

        return count;
    }

    /// <summary>The place of each task when they stand in order.</summary>
    private static long[] Keys<T>(ScheduleFacts facts, Func<int, T> by)
    {
        var keys = new long[facts.Count];
        var place = 0;
        foreach (var task in Enumerable.Range(0, facts.Count).OrderBy(by)) keys[task] = place++;
        return keys;
    }
}
