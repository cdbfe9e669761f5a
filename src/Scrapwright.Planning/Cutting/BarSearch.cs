namespace Scrapwright.Planning.Cutting;

/// <summary>The steps from a first fit to a proof, each taken only while the cost is above the bound.</summary>
internal sealed class BarSearch(BarSizes problem, BarLimits limits, CancellationToken cancellationToken)
{
    /// <summary>So few patterns are given to the exact model at once.</summary>
    private const int FewPatterns = 3000;

    private readonly BarDive dive = new(problem, limits, cancellationToken);
    private List<BarPattern> best = [];
    private long bound;
    private bool hasChosen;

    /// <summary>The best patterns, one for each bar, and the proven bound of the cost.</summary>
    internal (List<BarPattern> Patterns, BarSizes Sizes, long Bound) Run()
    {
        best = BarDive.BestFit(problem) ?? throw new InvalidOperationException("A piece finds no bar although some are plenty. Maybe the spare bars are missing.");
        bound = problem.Room.Length == 1 ? BarBounds.Alike(problem.Sizes, problem.Demands, problem.Room[0]) * problem.Price[0] : 1;
        if (IsOpen)
        {
            Generate();
        }

        best = Cheapest(best);
        return (best, problem, bound);
    }

    private bool IsOpen => Cost > bound && !cancellationToken.IsCancellationRequested;

    private long Cost => dive.Cost(best);

    private void Generate()
    {
        var columns = BarColumns.Generate(problem, best, limits.MostRounds, cancellationToken);
        bound = Math.Max(bound, columns.Bound);
        for (var turn = 0; turn < limits.Dives && IsOpen; turn++)
        {
            best = dive.Run(columns, Cost, turn) ?? best;
        }

        if (columns.Prices is null) return;
        if (IsOpen) Reach(columns, bound);
        if (IsOpen) Reach(columns, Cost - 1);
    }

    /// <summary>Looks for a solution of no more than a cost. With all patterns listed the search is exact and moves the bound.</summary>
    private void Reach(BarColumns columns, long cost)
    {
        var listed = BarListing.Find(problem, columns.Prices!, columns.Scale, cost, limits.MostPatterns);
        if (!hasChosen && listed is not { Count: <= FewPatterns })
        {
            Choose(columns);
            if (Cost <= cost) return;
        }

        if (listed is null) return;
        var answer = new BarAnswer(null, false);
        if (listed.Count <= limits.MostTreePatterns) answer = BarTreeCover.Find(problem, listed, cost, cost == bound, limits.MostTreeNodes, cancellationToken);
        if (!answer.IsCertain) answer = BarCover.Find(problem, listed, cost, cost == bound, limits.SolverWork, cancellationToken) is var second && second.Found is null && !second.IsCertain ? answer : second;
        if (answer.Found is { } found && dive.Cost(found) < Cost) best = found;
        if (answer.IsCertain) bound = answer.Found is null ? Math.Max(bound, cost + 1) : Math.Max(bound, Cost);
    }

    /// <summary>Chooses among the patterns met: quick, proves nothing.</summary>
    private void Choose(BarColumns columns)
    {
        hasChosen = true;
        var pool = columns.Patterns.Concat(dive.Met).DistinctBy(p => p.Key)
            .Select(p => (p, p.Counts.Max(c => (problem.Demands[c.Item] + c.Count - 1) / c.Count))).ToList();
        if (BarTreeCover.Find(problem, pool, Cost - 1, Cost - 1 == bound, limits.MostTreeNodes / 10, cancellationToken).Found is { } found) best = found;
    }

    /// <summary>Each pattern on the cheapest bar that holds it and is still there, so that no bar is bought that is on hand.</summary>
    private List<BarPattern> Cheapest(List<BarPattern> patterns)
    {
        var left = (int[])problem.Available.Clone();
        foreach (var pattern in patterns) left[pattern.Stock]--;
        return [.. patterns.OrderByDescending(p => problem.Price[p.Stock]).Select(pattern =>
        {
            var load = pattern.Counts.Sum(c => problem.Sizes[c.Item] * c.Count);
            var stock = Enumerable.Range(0, problem.Room.Length)
                .Where(s => problem.Room[s] >= load && (s == pattern.Stock || left[s] > 0)).MinBy(s => (problem.Price[s], s != pattern.Stock));
            left[pattern.Stock]++;
            left[stock]--;
            return pattern with { Stock = stock };
        })];
    }
}
