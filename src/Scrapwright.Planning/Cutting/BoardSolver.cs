using System.Numerics;
using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Cutting;

/// <summary>The guillotine layout of one board that is worth most, with a bound.</summary>
internal static class BoardSolver
{
    /// <summary>Copies beyond this are not told apart in the search.</summary>
    private const int MostCopies = byte.MaxValue;

    /// <summary>The best layout, as far as the limits allow. Without limits on copies it is always exact.</summary>
    /// <param name="problem">The problem. Sizes, values and counts above zero, kerf zero or more.</param>
    /// <param name="limits">How much work.</param>
    /// <param name="cancellationToken">Ends the search; the best so far is the outcome.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size, value or count is out of range.</exception>
    internal static BoardLayout Solve(BoardProblem problem, BoardLimits limits, CancellationToken cancellationToken = default)
    {
        Check(problem);
        var sizes = BoardSizes.Of(problem, limits.MostPlaces);
        if (sizes.Shapes.Length == 0) return new BoardLayout(new CutTree.Spare(), 0, 0);
        var (build, value, bound) = problem.Parts.All(p => p.Count is null) ? Unlimited(sizes) : Limited(sizes, limits, cancellationToken);
        if (!sizes.IsExact) bound = Math.Max(value, AreaBound(problem));
        return new BoardLayout(CutTreeMaker.Make(build, sizes.Mark, problem), value, bound);
    }

    private static void Check(BoardProblem problem)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(problem.Length.Picometres);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(problem.Width.Picometres);
        ArgumentOutOfRangeException.ThrowIfNegative(problem.Kerf.Picometres);
        foreach (var part in problem.Parts)
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(part.Length.Picometres);
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(part.Width.Picometres);
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(part.Value);
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(part.Count ?? 1);
        }
    }

    private static (BoardBuild? Build, long Value, long Bound) Unlimited(BoardSizes sizes)
    {
        var table = new BoardTable(sizes, sizes.Values);
        return (table.Build(), table.Most, table.Most);
    }

    private static (BoardBuild? Build, long Value, long Bound) Limited(BoardSizes sizes, BoardLimits limits, CancellationToken cancellationToken)
    {
        var most = Math.Max(1, new BoardTable(sizes, sizes.Values).Most);
        var scale = Math.Max(1, Math.Min(1000, (1L << 50) / most));
        var values = sizes.Values.Select(v => v * scale).ToArray();
        var unit = values.Aggregate(0L, (a, b) => (long)BigInteger.GreatestCommonDivisor(a, b));
        var prices = BoardPrices.Find(sizes, values, limits, cancellationToken);
        if (prices.Best.Value >= prices.Bound / unit * unit) return (prices.Best.Build, prices.Best.Value / scale, prices.Best.Value / scale);
        if (sizes.Counts.Any(c => c > MostCopies)) return (prices.Best.Build, prices.Best.Value / scale, prices.Bound / unit * unit / scale);
        var search = new BoardSearch(sizes, values, prices, limits, cancellationToken);
        search.Run(unit);
        return (search.Best, search.Value / scale, search.Bound / scale);
    }

    /// <summary>Without a grid: no more than all parts, and no more than the best worth for its area all over the board.</summary>
    private static long AreaBound(BoardProblem problem)
    {
        var kerf = problem.Kerf.Picometres;
        BigInteger Area(Length l, Length w) => ((BigInteger)l.Picometres + kerf) * ((BigInteger)w.Picometres + kerf);
        var left = Area(problem.Length, problem.Width);
        BigInteger bound = 0;
        foreach (var part in problem.Parts.OrderByDescending(p => p.Value / (double)Area(p.Length, p.Width)))
        {
            var area = Area(part.Length, part.Width) * (part.Count ?? int.MaxValue);
            var taken = BigInteger.Min(area, left);
            bound += (taken * part.Value / Area(part.Length, part.Width)) + 1;
            left -= taken;
        }

        return (long)BigInteger.Min(long.MaxValue, bound);
    }
}
