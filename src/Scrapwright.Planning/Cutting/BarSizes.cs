using System.Numerics;

namespace Scrapwright.Planning.Cutting;

/// <summary>A bar problem in whole numbers: each piece has a kerf added and each bar one, so that only sums count. Longest item first.</summary>
/// <remarks>Sizes are divided by their greatest common measure and bars rounded down to it, which changes nothing: every sum of sizes is a multiple of it.</remarks>
internal sealed class BarSizes
{
    private BarSizes(long[] sizes, int[] demands, int[] itemOf, long[] room, long[] price, int[] available)
    {
        Sizes = sizes;
        Demands = demands;
        ItemOf = itemOf;
        Room = room;
        Price = price;
        Available = available;
    }

    /// <summary>Size of each item, kerf included; falling.</summary>
    internal long[] Sizes { get; }

    /// <summary>How many of each item.</summary>
    internal int[] Demands { get; }

    /// <summary>Index of each item in the problem.</summary>
    internal int[] ItemOf { get; }

    /// <summary>Room of each stock, a kerf included.</summary>
    internal long[] Room { get; }

    /// <summary>Price of each stock, divided by the greatest common measure of the prices.</summary>
    internal long[] Price { get; }

    /// <summary>Bars of each stock, never more than pieces.</summary>
    internal int[] Available { get; }

    /// <summary>Whether as many bars of a stock as could ever be wanted are there.</summary>
    internal bool IsPlenty(int stock) => Available[stock] >= Demands.Sum();

    /// <summary>Room left over in all when the bars are all alike and cost so much; negative when they cannot hold the pieces; without limit for bars of several kinds.</summary>
    internal long Waste(long cost)
    {
        if (Room.Length > 1) return long.MaxValue;
        var waste = (Int128)Room[0] * (cost / Price[0]);
        for (var i = 0; i < Sizes.Length; i++) waste -= (Int128)Sizes[i] * Demands[i];
        return (long)waste;
    }

    /// <summary>The same bars for what is still wanted and left.</summary>
    internal BarSizes With(int[] demands, int[] available) => new(Sizes, demands, ItemOf, Room, Price, available);

    /// <summary>The problem in whole numbers.</summary>
    internal static BarSizes Of(BarProblem problem)
    {
        var order = Enumerable.Range(0, problem.Items.Length).OrderByDescending(i => problem.Items[i].Length).ThenBy(i => i).ToArray();
        var sizes = order.Select(i => problem.Items[i].Length.Picometres + problem.Kerf.Picometres).ToArray();
        var unit = sizes.Aggregate(0L, Gcd);
        var pieces = problem.Items.Sum(i => i.Count);
        var priceUnit = problem.Stocks.Select(s => s.Price).Aggregate(0L, Gcd);
        return new BarSizes(
            [.. sizes.Select(s => s / unit)],
            [.. order.Select(i => problem.Items[i].Count)],
            order,
            [.. problem.Stocks.Select(s => (s.Length.Picometres + problem.Kerf.Picometres) / unit)],
            [.. problem.Stocks.Select(s => s.Price / priceUnit)],
            [.. problem.Stocks.Select(s => Math.Min(s.Available ?? pieces, pieces))]);
    }

    private static long Gcd(long a, long b) => (long)BigInteger.GreatestCommonDivisor(a, b);
}
