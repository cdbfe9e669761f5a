using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Fits;

/// <summary>What the gifts of a plan weigh, from the pieces they are of.</summary>
public static class GiftWeights
{
    // Steps in which a mass is told: [g], our own choice.
    private const int Step = 5;

    // Density of wood whose species is not in the table: estimate.
    private const double UsualDensityKgPerM3 = 650;

    /// <summary>The made gifts, in the plan's order.</summary>
    public static ImmutableArray<GiftWeight> Of(Plan plan) => Of(PlanIndex.Of(plan));

    /// <summary>The same, for a plan that is indexed already.</summary>
    /// <param name="index">The plan with its designs.</param>
    public static ImmutableArray<GiftWeight> Of(PlanIndex index)
    {
        ArgumentNullException.ThrowIfNull(index);
        return Of(new PlanWood(index));
    }

    internal static ImmutableArray<GiftWeight> Of(PlanWood wood) => [.. wood.Plan.Made.Select(m => Of(wood, m))];

    private static GiftWeight Of(PlanWood wood, MadeGift made)
    {
        var (fitted, mean) = (wood.FittedPercent(made.Gift), wood.Home(made.Gift).MeanPercent);
        var parts = wood.Product(made.Gift)?.Parts ?? [];
        double grams = 0;
        foreach (var key in made.Parts.Select(p => p.Part).Distinct())
        {
            var share = parts.FirstOrDefault(p => p.Key == key) is { } part ? Left(part) : 1;
            grams += wood.Copies(made.Gift, key).Sum(p => Grams(wood, p, fitted)) * share;
        }

        // Measured when fitted, weighed when settled: the dry wood stays, its water changes.
        grams *= (1 + (mean / 100)) / (1 + (fitted / 100));
        return new() { Gift = made.Gift, Grams = (int)Math.Ceiling(grams / Step) * Step, MoisturePercent = mean };
    }

    /// <summary>A piece as the box it fills, or the cylinder of a rod. [g]</summary>
    private static double Grams(PlanWood wood, Piece piece, double moisturePercent)
    {
        // Definition: a circle fills π/4 of its square.
        if (wood.Rod(piece.Id) is { } rod)
            return Grams(rod.Species, Volume.Of(piece.Length, rod.Diameter, rod.Diameter), moisturePercent) * Math.PI / 4;
        return piece.Lanes.Sum(l => Grams(wood.Offcut(l.Offcut)?.Species ?? "", Volume.Of(piece.Length, l.Width, piece.Thickness), moisturePercent));
    }

    // Definition: a kilogram per cubic metre is 10⁻⁶ grams per cubic millimetre.
    private static double Grams(string key, Volume volume, double moisturePercent) =>
        SpeciesTable.FindKey(key) is { } species
            ? WoodMass.GramsOf(species, volume, Math.Min(moisturePercent, SpecificGravity.FibreSaturationPercent))
            : volume.CubicMillimetres * UsualDensityKgPerM3 * 1e-6;

    /// <summary>Share of a part's box that holes and slots leave, 0 to 1. Mitres and edges are left in.</summary>
    private static double Left(Part part)
    {
        var box = Volume.Of(part.Length, part.Width, part.Thickness).CubicMillimetres;
        if (part.Kind == PartKind.Rod || box <= 0) return 1;
        // Definition: π/4, as above.
        var holes = part.Holes.Sum(h => Volume.Of(h.Diameter, h.Diameter, h.Depth).CubicMillimetres * Math.PI / 4);
        var notches = part.Notches.Sum(n => Volume.Of(n.Opening, n.Depth, n.AcrossFace ? part.Width : part.Thickness).CubicMillimetres);
        return Math.Max(0, 1 - ((holes + notches) / box));
    }
}
