namespace Scrapwright.Planning.Cutting;

/// <summary>The bounded knapsack that prices patterns: which patterns are worth more than their bar, and what the best is worth, exactly in whole numbers.</summary>
/// <remarks>
/// Dynamic programming over the undominated (size, worth) pairs, items by falling worth per size; pairs that cannot pass the threshold any more are dropped.
/// Its cost depends on the number of pairs and not on the length of a bar in picometres.
/// </remarks>
internal sealed class BarKnapsack(BarSizes problem)
{
    private const int MostKept = 400;

    private long[] sizes = new long[1024];
    private long[] worths = new long[1024];
    private int[] parents = new int[1024];
    private int[] groups = new int[1024];
    private int count;

    /// <summary>The patterns worth more than the threshold of their stock, the best of each stock first and then unlike ones; empty when there is none.</summary>
    /// <param name="worth">Worth of one piece of each item; zero or more.</param>
    /// <param name="thresholds">What a pattern must be worth more than, by stock.</param>
    /// <param name="most">At most so many patterns.</param>
    internal List<BarPattern> Find(long[] worth, long[] thresholds, int most)
    {
        var bundles = BarBundle.Doubling(problem, worth);
        var bound = new BarRest(bundles);
        var longest = problem.Room.Max();
        count = 0;
        Add(0, 0, -1, -1);
        var front = new List<int> { 0 };
        var merged = new List<int>();
        var found = new PriorityQueue<(int State, int Stock), long>();
        for (var g = 0; g < bundles.Length; g++)
        {
            var (item, copies, size, value) = bundles[g];
            var a = 0;
            var b = 0;
            var bestWorth = -1L;
            merged.Clear();
            while (a < front.Count || b < front.Count)
            {
                var plain = a < front.Count ? sizes[front[a]] : long.MaxValue;
                var more = b < front.Count ? sizes[front[b]] + size : long.MaxValue;
                if (more > longest && plain == long.MaxValue) break;
                if (plain < more || (plain == more && worths[front[a]] >= worths[front[b]] + value))
                {
                    var state = front[a++];
                    if (worths[state] > bestWorth && CanPass(bound, g + 1, sizes[state], worths[state], thresholds))
                    {
                        bestWorth = worths[state];
                        merged.Add(state);
                    }

                    continue;
                }

                var from = front[b++];
                if (more > longest) continue;
                var sum = worths[from] + value;
                if (sum > bestWorth || PassesAny(more, sum, thresholds))
                {
                    var isBetter = sum > bestWorth && CanPass(bound, g + 1, more, sum, thresholds);
                    var passes = PassesAny(more, sum, thresholds);
                    if (!isBetter && !passes) continue;
                    var fresh = Add(more, sum, from, g);
                    if (passes) Keep(found, fresh, thresholds);
                    if (isBetter)
                    {
                        bestWorth = sum;
                        merged.Add(fresh);
                    }
                }
            }

            (front, merged) = (merged, front);
        }

        return Choose(found, bundles, thresholds, most);
    }

    private bool PassesAny(long size, long value, long[] thresholds)
    {
        for (var s = 0; s < thresholds.Length; s++)
        {
            if (problem.Room[s] >= size && value > thresholds[s] && problem.Available[s] > 0) return true;
        }

        return false;
    }

    private bool CanPass(BarRest bound, int next, long size, long value, long[] thresholds)
    {
        for (var s = 0; s < thresholds.Length; s++)
        {
            if (problem.Available[s] > 0 && problem.Room[s] >= size && value + bound.Most(next, problem.Room[s] - size) > thresholds[s]) return true;
        }

        return false;
    }

    private void Keep(PriorityQueue<(int State, int Stock), long> found, int state, long[] thresholds)
    {
        for (var s = 0; s < thresholds.Length; s++)
        {
            if (problem.Room[s] < sizes[state] || worths[state] <= thresholds[s] || problem.Available[s] == 0) continue;
            found.Enqueue((state, s), worths[state] - thresholds[s]);
            if (found.Count > MostKept) found.Dequeue();
        }
    }

    private List<BarPattern> Choose(PriorityQueue<(int State, int Stock), long> found, BarBundle[] bundles, long[] thresholds, int most)
    {
        var ranked = found.UnorderedItems.OrderByDescending(f => f.Priority).ThenBy(f => f.Element.State).ThenBy(f => f.Element.Stock).Select(f => f.Element).ToList();
        var chosen = new List<BarPattern>();
        var seen = new Dictionary<(int, int), int>();
        var keys = new HashSet<string>();
        foreach (var (state, stock) in ranked)
        {
            if (chosen.Count >= most) break;
            var pattern = Pattern(state, stock, bundles);
            var isNew = pattern.Counts.Count(c => seen.GetValueOrDefault((stock, c.Item)) == 0);
            if ((chosen.Any(p => p.Stock == stock) && isNew == 0) || !keys.Add(pattern.Key)) continue;
            foreach (var (item, _) in pattern.Counts) seen[(stock, item)] = 1;
            chosen.Add(pattern);
        }

        return chosen;
    }

    private BarPattern Pattern(int state, int stock, BarBundle[] bundles)
    {
        var counts = new SortedDictionary<int, int>();
        for (; parents[state] >= 0; state = parents[state])
        {
            var bundle = bundles[groups[state]];
            counts[bundle.Item] = counts.GetValueOrDefault(bundle.Item) + bundle.Copies;
        }

        return new BarPattern(stock, [.. counts.Select(c => (c.Key, c.Value))]);
    }

    private int Add(long size, long value, int parent, int group)
    {
        if (count == sizes.Length)
        {
            Array.Resize(ref sizes, count * 2);
            Array.Resize(ref worths, count * 2);
            Array.Resize(ref parents, count * 2);
            Array.Resize(ref groups, count * 2);
        }

        (sizes[count], worths[count], parents[count], groups[count]) = (size, value, parent, group);
        return count++;
    }
}
