namespace Scrapwright.Planning.Cutting;

/// <summary>Makes a fractional solution whole: takes the patterns used once or more, solves again for what is left, and so on.</summary>
internal sealed class BarDive(BarSizes problem, BarLimits limits, CancellationToken cancellationToken)
{
    /// <summary>The patterns met on the way, for the model that chooses among them.</summary>
    internal List<BarPattern> Met { get; } = [];

    /// <summary>The best solution of one dive; null when none beats <paramref name="cost"/>.</summary>
    /// <param name="columns">The linear optimum to begin with.</param>
    /// <param name="cost">Cost to beat.</param>
    /// <param name="turn">Which pattern goes first when none is used a whole time: dives of unlike turns go unlike ways.</param>
    internal List<BarPattern>? Run(BarColumns columns, long cost, int turn)
    {
        List<BarPattern>? best = null;
        var taken = new List<BarPattern>();
        var rest = problem;
        while (!cancellationToken.IsCancellationRequested)
        {
            var fixedCost = taken.Sum(p => problem.Price[p.Stock]);
            if (fixedCost + columns.Bound >= cost) break;
            rest = Take(rest, columns, taken, turn);
            var filled = BestFit(rest);
            if (filled is not null && Cost(taken) + Cost(filled) < cost)
            {
                best = [.. taken, .. filled];
                cost = Cost(best);
            }

            if (rest.Demands.All(d => d == 0)) break;
            columns = BarColumns.Generate(rest, columns.Patterns.Select(p => Within(p, rest)).OfType<BarPattern>(), limits.MostRounds, cancellationToken);
            Met.AddRange(columns.Patterns.Where((_, i) => i < columns.Uses.Length && columns.Uses[i] > 0));
        }

        return best;
    }

    internal long Cost(IEnumerable<BarPattern> patterns) => patterns.Sum(p => problem.Price[p.Stock]);

    /// <summary>Best fit both ways.</summary>
    internal static List<BarPattern>? BestFit(BarSizes problem) =>
        new[] { BarFit.Find(problem, perLength: true), BarFit.Find(problem, perLength: false) }
            .OfType<List<BarPattern>>().MinBy(found => found.Sum(p => problem.Price[p.Stock]));

    private static BarSizes Take(BarSizes rest, BarColumns columns, List<BarPattern> taken, int turn)
    {
        var demands = (int[])rest.Demands.Clone();
        var available = (int[])rest.Available.Clone();
        var order = Enumerable.Range(0, columns.Uses.Length).OrderByDescending(i => columns.Uses[i]).ThenBy(i => i).ToList();
        var before = taken.Count;
        foreach (var i in order.TakeWhile(i => columns.Uses[i] > 0.999))
        {
            for (var n = 0; n < (int)(columns.Uses[i] + 0.001); n++) TakeOne(columns.Patterns[i], demands, available, taken);
        }

        var half = order.Where(i => columns.Uses[i] is > 0.001 and <= 0.999).ToList();
        if (taken.Count == before && half.Count > 0)
        {
            TakeOne(columns.Patterns[half[turn % half.Count]], demands, available, taken);
        }

        if (taken.Count == before) TakeOne(columns.Patterns[order[0]], demands, available, taken);
        return rest.With(demands, available);
    }

    private static void TakeOne(BarPattern pattern, int[] demands, int[] available, List<BarPattern> taken)
    {
        var counts = pattern.Counts.Select(c => (c.Item, Count: Math.Min(c.Count, demands[c.Item]))).Where(c => c.Count > 0).ToArray();
        if (counts.Length == 0 || available[pattern.Stock] == 0) return;
        foreach (var (item, count) in counts) demands[item] -= count;
        available[pattern.Stock]--;
        taken.Add(pattern with { Counts = counts });
    }

    private static BarPattern? Within(BarPattern pattern, BarSizes rest)
    {
        var counts = pattern.Counts.Select(c => (c.Item, Count: Math.Min(c.Count, rest.Demands[c.Item]))).Where(c => c.Count > 0).ToArray();
        return counts.Length == 0 || rest.Available[pattern.Stock] == 0 ? null : pattern with { Counts = counts };
    }
}
