using System.Collections.Immutable;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Designs;

/// <summary>How a panel shall look.</summary>
/// <param name="Pattern">Order of the strips.</param>
/// <param name="Species">Species wished, keys; empty for any. Wishes are met where the pile allows.</param>
/// <param name="MinimumStrips">Fewest strips; at least 2 for a striped panel, 1 for a plain one.</param>
/// <param name="MaximumStrips">Most strips.</param>
public sealed record PanelWish(StripPattern Pattern, ImmutableArray<string> Species, int MinimumStrips, int MaximumStrips)
{
    /// <summary>Least CIEDE2000 difference between neighbours, 0 to 50; null for the shop's.</summary>
    public double? LeastContrast { get; init; }

    /// <summary>How the hearts of neighbouring strips lie.</summary>
    public HeartSides Hearts { get; init; } = HeartSides.AsTheyCome;

    /// <summary>From how many panels the pieces come.</summary>
    public SetPanels Panels { get; init; } = SetPanels.Any;

    /// <summary>True when neighbours must go together.</summary>
    public bool IsStriped => MinimumStrips >= 2;

    /// <summary>True when a panel that meets one wish meets the other.</summary>
    public bool IsLike(PanelWish other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return this with { Species = [] } == other with { Species = [] } && Species.SequenceEqual(other.Species);
    }

    /// <summary>Least CIEDE2000 difference between neighbours in a shop.</summary>
    public double ContrastIn(Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        return LeastContrast ?? shop.MinimumContrast;
    }

    /// <summary>
    /// Whether strips of two woods may lie side by side: in a striped panel they differ at least by the asked contrast. From light to dark any two different
    /// woods may; around an accent strips of one wood may too. Of sisters see <see cref="SistersMayTouch"/>.
    /// </summary>
    /// <param name="one">One wood.</param>
    /// <param name="other">The other.</param>
    /// <param name="shop">The shop.</param>
    public bool MayTouch(Species one, Species other, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return !IsStriped || Pattern switch
        {
            StripPattern.Graduated => one.Key != other.Key,
            StripPattern.Accent when one.Key == other.Key => true,
            _ => one.Key != other.Key && ColourDifference.Ciede2000(one.Colour, other.Colour) >= ContrastIn(shop),
        };
    }

    /// <summary>Whether two sisters may lie side by side though they are of one wood: in the middle of a book-matched panel, where their joint is what one wants to see.</summary>
    /// <param name="lower">Place of the lower one, 0 to strips − 2.</param>
    /// <param name="strips">How many strips the panel has.</param>
    public bool SistersMayTouch(int lower, int strips) => Pattern == StripPattern.BookMatched && lower == (strips / 2) - 1 && strips % 2 == 0;
}
