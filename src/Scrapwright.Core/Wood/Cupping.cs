using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Wood;

/// <summary>How much a flat-sawn strip cups when its moisture changes evenly. An estimate: one face drying before the other cups a strip more, and the other way.</summary>
public static class Cupping
{
    /// <summary>Radius of the growth rings in the middle of a board, where nobody has measured it: 100 mm, from a tree about a foot thick. Estimate.</summary>
    public static Length AssumedRingRadius { get; } = Length.FromMillimetres(100);

    /// <summary>The cup of a strip that was flat, after a moisture change through its whole thickness.</summary>
    /// <param name="species">The wood.</param>
    /// <param name="rings">How its rings meet the face. Unknown counts as flat; rift-sawn cups half as much, estimate; quarter-sawn stays flat.</param>
    /// <param name="width">Width of the strip, zero or more and less than twice the radius.</param>
    /// <param name="fromPercent">Moisture content at the start. [%], 0 and more; above fibre saturation counts as 30</param>
    /// <param name="toPercent">Moisture content at the end. [%], as above</param>
    /// <param name="ringRadius">Radius of the rings in the middle of the strip, above zero; null for <see cref="AssumedRingRadius"/>.</param>
    /// <returns>Which side goes hollow and how deep: drying wood on the bark side, wetted wood on the heart side. Null when the species has neither shrinkage nor coefficients.</returns>
    /// <remarks>
    /// Rings shrink by ε_T along and by ε_R across, so their angle grows by 1 + ε_T − ε_R and a flat line across a strip takes the curvature 2·(ε_R − ε_T)/R;
    /// the hollow is a sagitta, s = w²·curvature/8 = w²·(ε_R − ε_T)/(4·R). Derivation: docs/science/cupping.md. Our own, no source.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A negative width or moisture, no radius, or a strip wider than its tree.</exception>
    public static CupTendency? Estimate(Species species, RingOrientation rings, Length width, double fromPercent, double toPercent, Length? ringRadius = null)
    {
        Length radius = ringRadius ?? AssumedRingRadius;
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(radius, Length.Zero);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(width, radius * 2);

        // Strains are changes of a millimetre.
        SizeChange? along = MoistureMovement.WidthChange(species, RingOrientation.Flat, OneMillimetre, fromPercent, toPercent);
        SizeChange? across = MoistureMovement.WidthChange(species, RingOrientation.Quarter, OneMillimetre, fromPercent, toPercent);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, Length.Zero);
        if (along is not { } tangential || across is not { } radial)
        {
            return null;
        }

        // Definition: s = w²·curvature/8, see above.
        double widthMm = width.Millimetres;
        double curvaturePerMm = 2 * (radial.ChangeMm - tangential.ChangeMm) / radius.Millimetres;
        return new CupTendency(Share(rings) * widthMm * widthMm * curvaturePerMm / 8);
    }

    private static Length OneMillimetre => Length.FromMillimetres(1);

    // Estimate: the cup comes from the part of the rings that lies along the face.
    private static double Share(RingOrientation rings) => rings switch
    {
        RingOrientation.Quarter => 0,
        RingOrientation.Rift => 0.5,
        _ => 1,
    };
}
