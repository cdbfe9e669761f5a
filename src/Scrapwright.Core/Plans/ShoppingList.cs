using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Plans;

/// <summary>What must be bought for a plan: rods that are not on hand and drill bits that the shop does not have.</summary>
public static class ShoppingList
{
    /// <summary>The list, rods first; each kind ordered by size, then species and length.</summary>
    /// <param name="request">The facts of the plan.</param>
    /// <param name="made">The gifts that are made.</param>
    /// <param name="rods">The rods used.</param>
    public static ImmutableArray<ShoppingItem> For(PlanRequest request, ImmutableArray<MadeGift> made, ImmutableArray<RodUse> rods)
    {
        ArgumentNullException.ThrowIfNull(request);
        return For(request, request.DeriveDesigns(), made, rods);
    }

    /// <summary>The list when what came of the designs is known already.</summary>
    /// <param name="request">The facts of the plan.</param>
    /// <param name="designs">What came of every gift's design.</param>
    /// <param name="made">The gifts that are made.</param>
    /// <param name="rods">The rods used.</param>
    public static ImmutableArray<ShoppingItem> For(
        PlanRequest request, ImmutableArray<GiftDesign> designs, ImmutableArray<MadeGift> made, ImmutableArray<RodUse> rods)
    {
        ArgumentNullException.ThrowIfNull(request);
        return [.. Rods(made, rods), .. Bits(request, designs, made)];
    }

    private static IEnumerable<ShoppingItem> Rods(ImmutableArray<MadeGift> made, ImmutableArray<RodUse> rods)
    {
        var kinds = rods.Where(r => r.Bought)
            .GroupBy(r => (r.Diameter, r.Species, r.Length))
            .OrderBy(k => k.Key.Diameter).ThenBy(k => k.Key.Species, StringComparer.Ordinal).ThenBy(k => k.Key.Length);
        foreach (var kind in kinds)
        {
            var pieces = kind.SelectMany(r => r.Pieces).ToHashSet(StringComparer.Ordinal);
            var gifts = made.Where(m => m.Parts.Any(p => pieces.Contains(p.Piece))).Select(m => m.Gift);
            var name = SpeciesTable.NameOf(kind.Key.Species);
            yield return new ShoppingItem($"{name} dowel rod", kind.Count(), kind.Key.Diameter, kind.Key.Length, string.Join(", ", gifts));
        }
    }

    private static IEnumerable<ShoppingItem> Bits(PlanRequest request, ImmutableArray<GiftDesign> designs, ImmutableArray<MadeGift> made)
    {
        var labels = made.Select(m => m.Gift).ToHashSet(StringComparer.Ordinal);
        var holes =
            from design in designs
            where labels.Contains(design.Gift.Label)
            let product = (design.Outcome as DesignOutcome.Derived)?.Product
            where product is not null
            from part in product.Parts
            from hole in part.Holes
            where !request.Shop.DrillBits.Contains(hole.Diameter)
            select (hole.Diameter, design.Gift.Label);
        return holes.GroupBy(h => h.Diameter).OrderBy(g => g.Key)
            .Select(g => new ShoppingItem("drill bit", 1, g.Key, Length.Zero, string.Join(", ", g.Select(h => h.Label).Distinct())));
    }
}
