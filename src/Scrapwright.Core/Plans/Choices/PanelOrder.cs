using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Plans.Choices;

/// <summary>Whether strips may lie side by side in an order.</summary>
public static class PanelOrder
{
    /// <summary>True when neighbours are told apart as the design wishes.</summary>
    /// <param name="species">Species key of each strip in order.</param>
    /// <param name="wish">How the panel shall look; null for any way.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="sistersInTheMiddle">True when the two strips beside the middle are sisters.</param>
    public static bool Keeps(ImmutableArray<string> species, PanelWish? wish, Shop shop, bool sistersInTheMiddle = false)
    {
        ArgumentNullException.ThrowIfNull(shop);
        return wish is null || !wish.IsStriped || species.Zip(species.Skip(1)).Index().All(joint =>
            (sistersInTheMiddle && wish.SistersMayTouch(joint.Index, species.Length)) || MayTouch(joint.Item.First, joint.Item.Second));

        bool MayTouch(string lower, string upper) =>
            SpeciesTable.FindKey(lower) is { } one && SpeciesTable.FindKey(upper) is { } other && wish.MayTouch(one, other, shop);
    }

    /// <summary>Least CIEDE2000 difference between neighbours; infinite for a single strip.</summary>
    public static double LeastContrast(ImmutableArray<string> species) =>
        species.Length < 2 ? double.PositiveInfinity : species.Zip(species.Skip(1)).Min(pair => ContrastOf(pair.First, pair.Second));

    /// <summary>Mean CIEDE2000 difference between neighbours; 0 for a single strip.</summary>
    /// <param name="species">Species key of each strip in order.</param>
    public static double MeanContrast(ImmutableArray<string> species) =>
        species.Length < 2 ? 0 : species.Zip(species.Skip(1)).Average(pair => ContrastOf(pair.First, pair.Second));

    private static double ContrastOf(string one, string other) =>
        SpeciesTable.FindKey(one) is { } a && SpeciesTable.FindKey(other) is { } b ? ColourDifference.Ciede2000(a.Colour, b.Colour) : 0;
}
