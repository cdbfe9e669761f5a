using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Gifts;

/// <summary>Derives the product of every gift: family defaults, then the design's options, then the gift's own, then what it holds.</summary>
public static class GiftDesigns
{
    /// <summary>One outcome per gift, by gift label, in the order of the list. Never throws on what a maker wrote.</summary>
    /// <param name="gifts">The list; of two gifts with one label the first can be held.</param>
    /// <param name="designs">Designs from files; one with the key of a built-in design stands in for it.</param>
    /// <param name="shop">The shop.</param>
    public static ImmutableArray<GiftDesign> Derive(ImmutableArray<Gift> gifts, ImmutableArray<Design> designs, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        var derivation = new GiftDerivation(gifts, [.. designs, .. DesignCatalogue.BuiltIn], shop);
        return [.. gifts.Select(gift => new GiftDesign(gift, derivation.Derive(gift)))];
    }
}
