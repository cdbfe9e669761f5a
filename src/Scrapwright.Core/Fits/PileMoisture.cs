using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Fits;

/// <summary>A pile that the maker's meter finds damper or drier than the shop's air will make it: how long it has to lie, and what it would do to the widest strip.</summary>
public sealed record PileMoisture
{
    // A whole per cent is about what a meter and the equation are worth. Our own choice.
    private const double NearPercent = 1;

    /// <summary>What the meter says. [%]</summary>
    public required double PilePercent { get; init; }

    /// <summary>What the wood settles at in the shop. [%]</summary>
    public required double ShopPercent { get; init; }

    /// <summary>The month that is for, 1 to 12: the first in which a gift is due, else the driest of the shop's year.</summary>
    public required int Month { get; init; }

    /// <summary>How long the slowest piece used has to lie in the shop to make nine tenths of the change. An estimate.</summary>
    public required AcclimatisationTime Time { get; init; }

    /// <summary>Id of the strip that changes most; empty when the plan has none.</summary>
    public required string Strip { get; init; }

    /// <summary>Width of that strip.</summary>
    public required Length StripWidth { get; init; }

    /// <summary>How much its width changes until it has settled; below zero it shrinks.</summary>
    public required Length StripChange { get; init; }

    /// <summary>What to do, for a plan whose shop gave the pile's moisture; null when it gave none, or it is within a per cent of the shop's.</summary>
    public static PileMoisture? Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Request.Shop.PileMoisturePercent is not { } pilePercent) return null;
        var wood = new PlanWood(new PlanIndex(plan, []));
        var month = plan.Made.Select(m => wood.Gift(m.Gift)?.Due).Min()?.Month ?? wood.Here.DriestMonth;
        var shopPercent = wood.Here.At(month);
        if (Math.Abs(pilePercent - shopPercent) < NearPercent) return null;
        var strips = plan.GlueUps.SelectMany(g => g.Strips).Select(s => (s.Piece, s.Offcut, s.Width))
            .Concat(plan.Boards.Select(b => (b.Piece, b.Offcut, b.Width)))
            .Select(s => (s.Piece, s.Width, Change: ChangeMm(wood, s.Offcut, s.Width, pilePercent, shopPercent))).ToArray();
        var (piece, width, change) = strips.Length == 0 ? ("", Length.Zero, 0) : strips.MaxBy(s => Math.Abs(s.Change));
        return new()
        {
            PilePercent = pilePercent,
            ShopPercent = shopPercent,
            Month = month,
            Time = Used(plan).Select(label => TimeOf(wood, label)).DefaultIfEmpty().MaxBy(t => t.Days),
            Strip = piece,
            StripWidth = width,
            StripChange = MovedLength.Change(change),
        };
    }

    /// <summary>What to do, in two or three sentences.</summary>
    public string InWords(Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        var lie = $"Let the wood lie in the shop for {Time.InWords} before you mill it, with air on all sides. "
            + $"The meter says {FitWords.Percent(PilePercent)}; in {FitWords.Month(Month)} it settles at {FitWords.Percent(ShopPercent)}.";
        return Strip.Length == 0 || StripChange.IsZero
            ? lie
            : $"{lie} Until then {Strip}, {FitWords.Size(StripWidth, shop)} wide, would {(StripChange.IsNegative ? "shrink" : "swell")} by {FitWords.Fine(StripChange.Abs(), shop, Rounding.Up)}.";
    }

    private static double ChangeMm(PlanWood wood, string label, Length width, double fromPercent, double toPercent) => wood.Offcut(label) is { } offcut
        ? width.Millimetres * WoodStrain.Larger(new(offcut.Species, offcut.Rings, GrainDirection.Width, width), fromPercent, toPercent)
        : 0;

    private static IEnumerable<string> Used(Plan plan) => plan.GlueUps.SelectMany(g => g.Strips).Select(s => s.Offcut).Concat(plan.Boards.Select(b => b.Offcut)).Distinct();

    private static AcclimatisationTime TimeOf(PlanWood wood, string label) =>
        wood.Offcut(label) is { } offcut && offcut.Thickness.IsPositive && SpeciesTable.FindKey(offcut.Species) is { } species
            ? Acclimatisation.DaysEstimate(species, offcut.Thickness)
            : default;
}
