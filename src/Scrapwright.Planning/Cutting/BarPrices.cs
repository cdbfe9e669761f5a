namespace Scrapwright.Planning.Cutting;

/// <summary>Whole-number prices that prove a bound: the pieces of no pattern together cost more than its bar with its rack.</summary>
/// <param name="Pieces">Price of one piece of each item; zero or more.</param>
/// <param name="Racks">Price of a bar's place on the rack by stock, zero where bars are plenty.</param>
internal sealed record BarPrices(long[] Pieces, long[] Racks)
{
    /// <summary>What all pieces cost, less all places: no solution costs less.</summary>
    internal Int128 Sum { get; init; }
}
