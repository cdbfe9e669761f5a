using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans;

/// <summary>Whether a pinned offcut could be a strip of its part at all.</summary>
internal static class PinShortage
{
    /// <summary>Why no plan can keep a pin; null when one might, or when the gift has no such panel part.</summary>
    public static Reason.Pinned? Find(Pin pin, Product product, PlanRequest request)
    {
        if (product.Parts.FirstOrDefault(p => p.Key == pin.Part && p.Kind == PartKind.Panel) is not { } part) return null;
        if (PlanStock.ByLabel(request).FindWood(pin.Offcut, request.Shop) is not { } offcut) return Fault(PinFault.NotInPile);
        if (request.Choices.SavedIn(request.Pile).Contains(pin.Offcut)) return Fault(PinFault.KeptForLater);
        var shop = request.Shop;

        // A part of several copies may be cut from panels of a single blank each: nothing shorter is ever of use.
        var needs = new PanelNeeds(part, 1, 1, shop) { Margins = GiftMargins.Of(product, shop).OfPanel(part.Key, part.Count, 1) };
        if (offcut.Length < needs.Overlap) return Fault(PinFault.TooShort, needs.Overlap, offcut.Length);
        var width = StripMilling.Width(offcut.Width, shop).End;
        if (width < shop.NarrowestStrip) return Fault(PinFault.TooNarrow, shop.NarrowestStrip, width);
        var best = Ladders(offcut, needs, shop).MaxBy(l => l.End)!;
        return best.End < needs.StripThickness(best.Spread) ? Fault(PinFault.TooThin, needs.StripThickness(best.Spread), best.End) : null;

        Reason.Pinned Fault(PinFault fault, Length needed = default, Length has = default) => new(pin.Part, pin.Offcut, fault, needed, has);
    }

    private static IEnumerable<Ladder> Ladders(Offcut offcut, PanelNeeds needs, Shop shop) =>
    [
        StripMilling.Thickness(offcut, offcut.Length, offcut.Width, shop),
        StripMilling.Thickness(offcut, needs.Overlap, offcut.Width, shop),
        StripMilling.Thickness(offcut, offcut.Length, Length.Min(offcut.Width, shop.NarrowestStrip * 2), shop),
    ];
}
