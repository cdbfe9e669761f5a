namespace Scrapwright.Core.Wood;

/// <summary>How much a board moves across its width and its thickness, by how its growth rings lie. Straight grain, free to move.</summary>
public static class RingMovement
{
    /// <summary>A radial and a tangential value turned to a direction between them: strain, shrinkage or coefficient, which turn alike.</summary>
    /// <param name="radialPerPercent">The value across the rings. Any unit; the result has the same.</param>
    /// <param name="tangentialPerPercent">The value along the rings. The same unit.</param>
    /// <param name="ringAngleDegrees">Angle between the rings and the direction asked for. [°], 0 along the rings to 90 across</param>
    /// <returns>ε_T·cos²θ + ε_R·sin²θ.</returns>
    /// <remarks>The strain tensor turned by θ; the shear that comes with it makes a rift-sawn square a diamond and is left out here. Definition; see docs/science/movement.md.</remarks>
    public static double AtRingAngle(double radialPerPercent, double tangentialPerPercent, double ringAngleDegrees)
    {
        // Definition: 180 degrees in half a turn.
        double cosine = Math.Cos(ringAngleDegrees * Math.PI / 180);
        return radialPerPercent + (tangentialPerPercent - radialPerPercent) * cosine * cosine;
    }

    /// <summary>Dimensional change coefficient that follows from a shrinkage.</summary>
    /// <param name="shrinkagePercent">Shrinkage green to ovendry. [%], 0 to below 150</param>
    /// <returns>C = (S/3000)/(1 − S/150). [1/%], of the size at 10 % moisture</returns>
    /// <remarks>
    /// Eq. 13-3 of [WoodHandbook] for one per cent from 10 %, which is where its Table 13-5 stands: it gives the printed coefficient to five decimals for most species
    /// of the United States. Found here, not printed; docs/science/movement.md names the exceptions.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double CoefficientFromShrinkage(double shrinkagePercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(shrinkagePercent);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(shrinkagePercent, 150);
        return shrinkagePercent / 3000 / (1 - shrinkagePercent / 150);
    }

    /// <summary>Change of width per one per cent of moisture, for 6 to 14 % moisture.</summary>
    /// <param name="species">The wood.</param>
    /// <param name="rings">How its rings meet the face: flat moves tangentially, quarter radially, rift in the middle (45 degrees); unknown counts as flat, which is the larger.</param>
    /// <returns>Coefficient. [1/%]; from Table 13-5 of [WoodHandbook], else by <see cref="CoefficientFromShrinkage"/>; null when the species has neither.</returns>
    public static double? WidthCoefficient(Species species, RingOrientation rings)
    {
        ArgumentNullException.ThrowIfNull(species);
        return Coefficients(species) is ({ } radial, { } tangential) ? AtRingAngle(radial, tangential, WidthAngleDegrees(rings)) : null;
    }

    /// <summary>Change of thickness per one per cent of moisture, for 6 to 14 % moisture.</summary>
    /// <param name="species">The wood.</param>
    /// <param name="rings">How its rings meet the face: the other direction than the width's; unknown counts as tangential here too, which is the larger.</param>
    /// <returns>Coefficient. [1/%], or null; as for <see cref="WidthCoefficient"/>.</returns>
    public static double? ThicknessCoefficient(Species species, RingOrientation rings)
    {
        ArgumentNullException.ThrowIfNull(species);
        return Coefficients(species) is ({ } radial, { } tangential) ? AtRingAngle(radial, tangential, ThicknessAngleDegrees(rings)) : null;
    }

    /// <summary>Where <see cref="WidthCoefficient"/> and <see cref="ThicknessCoefficient"/> come from, or null.</summary>
    /// <param name="species">The wood.</param>
    public static ValueSource? CoefficientSource(Species species)
    {
        ArgumentNullException.ThrowIfNull(species);
        return species.Sources.Coefficients ?? (species.Sources.Shrinkage is { } shrinkage
            ? shrinkage with { Place = shrinkage.Place + ", carried to a coefficient", Confidence = shrinkage.Confidence == Confidence.Printed ? Confidence.Derived : shrinkage.Confidence }
            : null);
    }

    // Definition: along the rings 0, across them 90; rift-sawn at the middle of its 30 to 60 degrees.
    internal static double WidthAngleDegrees(RingOrientation rings) => rings switch
    {
        RingOrientation.Quarter => 90,
        RingOrientation.Rift => 45,
        _ => 0,
    };

    // Definition: square to the width, save that an unknown board moves tangentially both ways.
    internal static double ThicknessAngleDegrees(RingOrientation rings) => rings switch
    {
        RingOrientation.Flat => 90,
        RingOrientation.Rift => 45,
        _ => 0,
    };

    private static (double? Radial, double? Tangential) Coefficients(Species species) =>
        species.CoefficientRadial is not null && species.CoefficientTangential is not null
            ? (species.CoefficientRadial, species.CoefficientTangential)
            : (FromShrinkage(species.ShrinkageRadialPercent), FromShrinkage(species.ShrinkageTangentialPercent));

    private static double? FromShrinkage(double? percent) => percent is { } value ? CoefficientFromShrinkage(value) : null;
}
