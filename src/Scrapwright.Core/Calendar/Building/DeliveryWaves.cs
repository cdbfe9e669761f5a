namespace Scrapwright.Core.Calendar.Building;

/// <summary>Orders in which several deliveries at a time go through the shop step by step, so that a setting serves all of them.</summary>
internal sealed class DeliveryWaves
{
    // Settings count less than any part of a step that matters. Our own choice.
    private const double SettingsInStep = 1000;

    private readonly ScheduleFacts facts;
    private readonly int[] depth;
    private readonly int[] place;
    private readonly int[] rank;

    /// <summary>Puts deliveries in order of date, then of priority.</summary>
    /// <param name="facts">The problem.</param>
    /// <param name="late">By task: the latest start that keeps dates; it decides between alike.</param>
    internal DeliveryWaves(ScheduleFacts facts, long[] late)
    {
        this.facts = facts;
        depth = Depths(facts);
        place = Places(facts);
        rank = new int[facts.Count];
        var next = 0;
        foreach (var task in Enumerable.Range(0, facts.Count).OrderBy(t => late[t])) rank[task] = next++;
    }

    /// <summary>Keys by task: waves one after the other, in each the steps, of each step the settings.</summary>
    /// <param name="waveOf">The wave of the delivery in a place, from zero; the last place is for tasks that no delivery waits for.</param>
    internal long[] Keys(Func<int, int> waveOf)
    {
        var (depths, settings) = (depth.DefaultIfEmpty(0).Max() + 1L, facts.SetUps.Length + 1L);
        var keys = new long[facts.Count];
        for (var t = 0; t < keys.Length; t++)
        {
            keys[t] = (((((waveOf(place[t]) * depths) + depth[t]) * settings) + facts.SetUp[t] + 1) * facts.Count) + rank[t];
        }

        return keys;
    }

    /// <summary>Keys by task: step by step through all deliveries, each some steps behind the one before it; of each step the settings.</summary>
    /// <param name="steps">How many steps, from zero (all together); parts of a step are possible.</param>
    internal double[] Staggered(double steps)
    {
        var settings = facts.SetUps.Length + 1.0;
        return [.. depth.Select((d, t) => d + (place[t] * steps) + ((facts.SetUp[t] + 1) / settings / SettingsInStep))];
    }

    /// <summary>By task: how many follow one another before it at most.</summary>
    private static int[] Depths(ScheduleFacts facts)
    {
        var depth = new int[facts.Count];
        foreach (var task in facts.Order)
        {
            foreach (var link in facts.Into[task]) depth[task] = Math.Max(depth[task], depth[link.Before] + 1);
        }

        return depth;
    }

    /// <summary>By task: the first of the deliveries that wait for it.</summary>
    private static int[] Places(ScheduleFacts facts)
    {
        var place = new int[facts.Count];
        Array.Fill(place, facts.Deliveries.Length);
        var order = facts.Deliveries.OrderBy(d => d.Due ?? int.MaxValue).ThenBy(d => d.Priority).ToArray();
        for (var i = order.Length - 1; i >= 0; i--)
        {
            foreach (var (task, _) in order[i].Last) place[task] = i;
        }

        for (var i = facts.Count - 1; i >= 0; i--)
        {
            var task = facts.Order[i];
            foreach (var link in facts.OutOf[task]) place[task] = Math.Min(place[task], place[link.After]);
        }

        return place;
    }
}
