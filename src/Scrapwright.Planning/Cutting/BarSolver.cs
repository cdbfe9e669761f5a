using System.Collections.Immutable;

namespace Scrapwright.Planning.Cutting;

/// <summary>Cuts pieces from the cheapest bars, and proves it: bounds first, then column generation, then whole patterns.</summary>
internal static class BarSolver
{
    /// <summary>The cheapest way to cut the pieces, as far as the limits allow.</summary>
    /// <param name="problem">The problem. Lengths, counts and prices above zero, kerf zero or more.</param>
    /// <param name="limits">How much work.</param>
    /// <param name="cancellationToken">Ends the search; the best so far is the outcome.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length, count or price is out of range.</exception>
    internal static BarOutcome Solve(BarProblem problem, BarLimits limits, CancellationToken cancellationToken = default)
    {
        foreach (var item in problem.Items)
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(item.Length.Picometres);
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(item.Count);
        }

        foreach (var stock in problem.Stocks)
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(stock.Length.Picometres);
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(stock.Price);
            ArgumentOutOfRangeException.ThrowIfNegative(stock.Available ?? 0);
        }

        ArgumentOutOfRangeException.ThrowIfNegative(problem.Kerf.Picometres);
        if (problem.Items.IsEmpty) return new BarOutcome.Cut([], 0, 0);
        var longest = problem.Stocks.Where(s => s.Available != 0).Select(s => s.Length).DefaultIfEmpty().Max();
        ImmutableArray<int> tooLong = [.. Enumerable.Range(0, problem.Items.Length).Where(i => problem.Items[i].Length > longest)];
        return tooLong.IsEmpty ? SolveWithSpare(problem, limits, cancellationToken) : new BarOutcome.Short(tooLong, true);
    }

    /// <summary>With bars of the longest kind that cost more than all there are together: they are used only when the others do not do.</summary>
    private static BarOutcome SolveWithSpare(BarProblem problem, BarLimits limits, CancellationToken cancellationToken)
    {
        var longest = problem.Stocks.Where(s => s.Available != 0).Max(s => s.Length);
        var pieces = problem.Items.Sum(i => i.Count);
        var isPlenty = problem.Stocks.Any(s => s.Length == longest && (s.Available ?? pieces) >= pieces);
        var all = problem.Stocks.Sum(s => s.Price * Math.Min(s.Available ?? pieces, pieces));
        var spare = problem.Stocks.Length;
        var padded = isPlenty ? problem : problem with { Stocks = [.. problem.Stocks, new BarStock(longest, all + 1)] };
        var (patterns, sizes, bound) = new BarSearch(BarSizes.Of(padded), limits, cancellationToken).Run();
        var unit = padded.Stocks[0].Price / sizes.Price[0];
        if (patterns.Any(p => p.Stock == spare)) return new BarOutcome.Short([], bound * unit > all);
        return new BarOutcome.Cut(Bars(problem, sizes, patterns), patterns.Sum(p => sizes.Price[p.Stock]) * unit, bound * unit);
    }

    /// <summary>Each piece once: what patterns cover too often is left out.</summary>
    private static ImmutableArray<CutBar> Bars(BarProblem problem, BarSizes sizes, List<BarPattern> patterns)
    {
        var left = (int[])sizes.Demands.Clone();
        var bars = ImmutableArray.CreateBuilder<CutBar>();
        foreach (var pattern in patterns)
        {
            var pieces = new int[problem.Items.Length];
            foreach (var (item, count) in pattern.Counts)
            {
                var taken = Math.Min(count, left[item]);
                pieces[sizes.ItemOf[item]] = taken;
                left[item] -= taken;
            }

            bars.Add(new CutBar(pattern.Stock, [.. pieces]));
        }

        return bars.ToImmutable();
    }
}
