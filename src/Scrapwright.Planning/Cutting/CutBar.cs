using System.Collections.Immutable;

namespace Scrapwright.Planning.Cutting;

/// <summary>One bar and what is cut from it.</summary>
/// <param name="Stock">Index of the stock.</param>
/// <param name="Pieces">How many pieces of each item, in the order of the items.</param>
internal sealed record CutBar(int Stock, ImmutableArray<int> Pieces);
