namespace Scrapwright.Planning.Cutting;

/// <summary>Prices on copies: each copy of a part costs its price, and all that are wanted are paid back. Any price of zero or more proves a bound; good ones are found step by step.</summary>
/// <remarks>Lagrangian relaxation of the number of copies, with Polyak's step; all in whole numbers, so that every bound holds exactly. Values are scaled first to leave room for fractions of a price.</remarks>
internal sealed class BoardPrices
{
    private readonly BoardSizes sizes;
    private readonly long[] values;

    private BoardPrices(BoardSizes sizes, long[] values)
    {
        (this.sizes, this.values) = (sizes, values);
        Prices = new long[values.Length];
        Table = new BoardTable(sizes, values);
        Bound = Table.Most;
    }

    /// <summary>Price of one copy of each part, scaled.</summary>
    internal long[] Prices { get; private set; }

    /// <summary>The table under these prices.</summary>
    internal BoardTable Table { get; private set; }

    /// <summary>The bound they prove, scaled.</summary>
    internal long Bound { get; private set; }

    /// <summary>The best layout met on the way once copies beyond those wanted are left out.</summary>
    internal (BoardBuild? Build, long Value) Best { get; private set; }

    /// <summary>Value of each part less its price.</summary>
    internal long[] Reduced => Less(Prices);

    /// <summary>What all copies wanted pay back.</summary>
    internal long PaidBack => Sum(Prices);

    /// <summary>Looks for good prices.</summary>
    internal static BoardPrices Find(BoardSizes sizes, long[] values, BoardLimits limits, CancellationToken cancellationToken)
    {
        var found = new BoardPrices(sizes, values);
        var rounds = Math.Min(limits.Prices.Rounds, limits.Prices.Steps / Math.Max(1, BoardTable.StepsFor(sizes)));
        var prices = new double[values.Length];
        var table = found.Table;
        var share = 1.0;
        var stale = 0;
        for (var round = 0; round < rounds && !cancellationToken.IsCancellationRequested; round++)
        {
            var build = table.Build();
            var used = Uses(build, values.Length);
            found.Keep(build);
            var gradient = used.Select((u, p) => u - sizes.Counts[p] is var g && g < 0 && prices[p] <= 0 ? 0 : g).ToArray();
            var norm = gradient.Sum(g => (double)g * g);
            if (norm == 0 || found.Bound <= found.Best.Value) break;
            var bound = table.Most + found.Sum(prices.Select(p => (long)p).ToArray());
            var step = share * (bound - found.Best.Value) / norm;
            for (var p = 0; p < prices.Length; p++) prices[p] = Math.Max(0, prices[p] + (step * gradient[p]));
            var whole = prices.Select(p => (long)p).ToArray();
            table = new BoardTable(sizes, found.Less(whole));
            if (table.Most + found.Sum(whole) is var fresh && fresh < found.Bound)
            {
                (found.Bound, found.Prices, found.Table) = (fresh, whole, table);
                stale = 0;
            }
            else if (++stale == 6)
            {
                (share, stale) = (share / 2, 0);
                if (share < 0.004) break;
            }
        }

        found.Keep(table.Build());
        return found;
    }

    /// <summary>How often each part is in a build.</summary>
    internal static int[] Uses(BoardBuild? build, int parts)
    {
        var uses = new int[parts];
        Count(build, uses);
        return uses;
    }

    private static void Count(BoardBuild? build, int[] uses)
    {
        switch (build)
        {
            case BoardBuild.One one:
                uses[one.Shape.Part]++;
                break;
            case BoardBuild.EndToEnd pair:
                Count(pair.First, uses);
                Count(pair.Second, uses);
                break;
            case BoardBuild.SideBySide pair:
                Count(pair.First, uses);
                Count(pair.Second, uses);
                break;
        }
    }

    private void Keep(BoardBuild? build)
    {
        var kept = Within(build, (int[])sizes.Counts.Clone());
        var value = Uses(kept, values.Length).Select((u, p) => u * values[p]).Sum();
        if (value > Best.Value) Best = (kept, value);
    }

    private static BoardBuild? Within(BoardBuild? build, int[] left)
    {
        if (build is BoardBuild.One one) return left[one.Shape.Part]-- > 0 ? one : null;
        var (a, b) = build switch
        {
            BoardBuild.EndToEnd e => (e.First, e.Second),
            BoardBuild.SideBySide s => (s.First, s.Second),
            _ => (null, null),
        };
        var first = a is null ? null : Within(a, left);
        var second = b is null ? null : Within(b, left);
        if (first is null || second is null) return first ?? second;
        return build is BoardBuild.EndToEnd ? new BoardBuild.EndToEnd(first, second) : new BoardBuild.SideBySide(first, second);
    }

    private long[] Less(long[] prices) => [.. values.Select((v, p) => v - prices[p])];

    private long Sum(long[] prices) => prices.Select((price, p) => price * sizes.Counts[p]).Sum();
}
