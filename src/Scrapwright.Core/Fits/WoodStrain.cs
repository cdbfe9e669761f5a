using System.Collections.Frozen;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Fits;

/// <summary>
/// How much a wood grows for each unit of its size, by species, rings and direction. Within 6 to 14 % moisture by the dimensional change
/// coefficient, outside by the total shrinkage, one after the other where a change passes a limit. docs/science/season-fit.md has the model.
/// </summary>
internal static class WoodStrain
{
    // [WoodHandbook], ch. 13: the coefficients hold from 6 to 14 % moisture content.
    private const double LeastPercent = 6;
    private const double MostPercent = 14;

    // Stands in for woods whose movement no source here gives: the one that moves most.
    private static readonly Species Worst = SpeciesTable.All.MaxBy(s => s.ShrinkageTangentialPercent ?? 0)!;

    private static readonly FrozenDictionary<string, Species> Known = SpeciesTable.All
        .Where(s => s is { ShrinkageRadialPercent: not null, ShrinkageTangentialPercent: not null }).ToFrozenDictionary(s => s.Key, StringComparer.Ordinal);

    /// <summary>Name of the species taken where the movement of another is not known.</summary>
    internal static string WorstName => Worst.Name;

    /// <summary>Whether the table has the movement of a species.</summary>
    internal static bool IsKnown(string species) => species.Length == 0 || Known.ContainsKey(species);

    /// <exception cref="ArgumentException">The species is not in the table.</exception>
    internal static void RequireSpecies(string species, string name)
    {
        if (species.Length > 0 && SpeciesTable.FindKey(species) is null) throw new ArgumentException($"No species has the key '{species}'.", name);
    }

    /// <summary>From the least to the most that the rings allow: one value where they are known.</summary>
    internal static StrainRange Range(MovingWood wood, double fromPercent, double toPercent)
    {
        if (!Moves(wood)) return default;
        if (wood.Rings != RingOrientation.Unknown) return StrainRange.Only(Larger(wood, fromPercent, toPercent));
        var (radial, tangential) = Both(wood.Species, fromPercent, toPercent);
        return StrainRange.Between(radial, tangential);
    }

    /// <summary>One value: the larger movement, the tangential one, where nobody has looked at the rings.</summary>
    internal static double Larger(MovingWood wood, double fromPercent, double toPercent)
    {
        if (!Moves(wood)) return 0;
        var (radial, tangential) = Both(wood.Species, fromPercent, toPercent);
        return RingMovement.AtRingAngle(
            radial, tangential, wood.Direction == GrainDirection.Width ? RingMovement.WidthAngleDegrees(wood.Rings) : RingMovement.ThicknessAngleDegrees(wood.Rings));
    }

    private static bool Moves(MovingWood wood) => wood.Species.Length > 0 && wood.Direction != GrainDirection.Along;

    private static (double Radial, double Tangential) Both(string key, double fromPercent, double toPercent)
    {
        var species = Known.GetValueOrDefault(key, Worst);
        return (
            Strain(species.CoefficientRadial, species.ShrinkageRadialPercent!.Value, fromPercent, toPercent),
            Strain(species.CoefficientTangential, species.ShrinkageTangentialPercent!.Value, fromPercent, toPercent));
    }

    private static double Strain(double? coefficientPerPercent, double shrinkagePercent, double fromPercent, double toPercent)
    {
        fromPercent = Math.Clamp(fromPercent, 0, SpecificGravity.FibreSaturationPercent);
        toPercent = Math.Clamp(toPercent, 0, SpecificGravity.FibreSaturationPercent);
        if (coefficientPerPercent is not { } coefficient) return Movement.WidthChangeByShrinkage(1, shrinkagePercent, fromPercent, toPercent);
        var enter = Math.Clamp(fromPercent, LeastPercent, MostPercent);
        var leave = Math.Clamp(toPercent, LeastPercent, MostPercent);
        var size = 1 + Movement.WidthChangeByShrinkage(1, shrinkagePercent, fromPercent, enter);
        size += Movement.WidthChangeByCoefficient(size, coefficient, leave - enter);
        size += Movement.WidthChangeByShrinkage(size, shrinkagePercent, leave, toPercent);
        return size - 1;
    }
}
