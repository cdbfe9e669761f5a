using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Tests;

/// <summary>The rules of a striped glue-up, for tests that try everything: strips of narrow offcuts, each used whole or sawn into layers.</summary>
internal static class StripsByHand
{
    /// <summary>What a glue-up of a product's first part must measure, with what the shop's chance asks to be held in hand.</summary>
    internal static PanelNeeds Needs(Product product, int blanks, int layers, Shop shop) =>
        new(product.Parts[0], blanks, layers, shop) { Margins = GiftMargins.Of(product, shop).OfPanel(product.Parts[0].Key, blanks * layers, layers) };

    /// <summary>
    /// Whether three or more strips make the glue-up. Layers of one offcut share its two edges, so each counts as if all of them lay in the glue-up. Widths count in hundredths
    /// of a millimetre, what is there rounded down and what is needed up, as the planner says it does.
    /// </summary>
    /// <param name="strips">The strips.</param>
    /// <param name="needs">The glue-up.</param>
    /// <param name="spreadOf">One standard deviation of an offcut's own thickness; null for none, as when all were measured.</param>
    internal static bool Hold(IReadOnlyCollection<(Offcut Offcut, int Layers)> strips, PanelNeeds needs, Func<Offcut, Length>? spreadOf = null)
    {
        var shop = needs.Shop;
        return strips.Count >= 3
            && strips.Sum(s => Grid.Hundredths.Down(StripMilling.Width(s.Offcut.Width, shop).End - (needs.WidthPerEdge * (2 * s.Layers)))) >= Grid.Hundredths.Up(needs.WidthBase)
            && strips.All(s => IsThickEnough(s.Offcut, s.Layers, needs, spreadOf?.Invoke(s.Offcut) ?? Length.Zero))
            && HasOrder([.. strips.Select(s => s.Offcut.Species)], shop.MinimumContrast, null);
    }

    /// <summary>Whether a strip of an offcut, or each layer of it, is thick enough.</summary>
    internal static bool IsThickEnough(Offcut offcut, int layers, PanelNeeds needs, Length spread = default) =>
        StripMilling.Thickness(offcut, offcut.Length, offcut.Width, layers, needs.Shop, spread) is var ladder && ladder.End >= needs.StripThickness(ladder.Spread);

    private static bool HasOrder(ImmutableList<string> left, double contrast, string? last) =>
        left.IsEmpty || left.Distinct().Any(next =>
            (last is null || (last != next && ColourDifference.Ciede2000(SpeciesTable.Get(last).Colour, SpeciesTable.Get(next).Colour) >= contrast))
            && HasOrder(left.Remove(next), contrast, next));
}
