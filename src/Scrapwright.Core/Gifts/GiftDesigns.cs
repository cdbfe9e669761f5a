using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Gifts;

/// <summary>Derives the product of every gift: family defaults, then the design's options, then the gift's own, then what it holds.</summary>
public static class GiftDesigns
{
    /// <summary>One outcome per gift, by gift label, in the order of the list. Never throws on what a maker wrote.</summary>
    public static ImmutableArray<GiftDesign> Derive(ImmutableArray<Gift> gifts, ImmutableArray<Design> designs, Shop shop) =>
        throw new NotSupportedException($"{gifts.Length}{designs.Length}{shop}");
}
