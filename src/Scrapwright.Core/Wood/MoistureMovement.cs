using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Wood;

/// <summary>How much a board of a species changes between two moisture contents. Chooses the model and says which.</summary>
public static class MoistureMovement
{
    // [WoodHandbook], eq. 13-2: the range its coefficients hold for.
    private const double CoefficientFromPercent = 6, CoefficientToPercent = 14;

    /// <summary>Change of width.</summary>
    /// <param name="species">The wood.</param>
    /// <param name="rings">How its rings meet the face; unknown counts as flat.</param>
    /// <param name="width">Width at the start, zero or more.</param>
    /// <param name="fromPercent">Moisture content at the start. [%], 0 and more; above fibre saturation counts as 30</param>
    /// <param name="toPercent">Moisture content at the end. [%], as above</param>
    /// <returns>By coefficient when both moistures lie within 6 to 14 % and the species has one, else by shrinkage; null when the species has not what is needed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative width or moisture.</exception>
    public static SizeChange? WidthChange(Species species, RingOrientation rings, Length width, double fromPercent, double toPercent) =>
        Change(species, RingMovement.WidthAngleDegrees(rings), width, fromPercent, toPercent);

    /// <summary>Change of thickness.</summary>
    /// <param name="species">The wood.</param>
    /// <param name="rings">How its rings meet the face; unknown counts as the larger movement.</param>
    /// <param name="thickness">Thickness at the start, zero or more.</param>
    /// <param name="fromPercent">Moisture content at the start. [%], as for <see cref="WidthChange"/></param>
    /// <param name="toPercent">Moisture content at the end. [%]</param>
    /// <returns>As for <see cref="WidthChange"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative thickness or moisture.</exception>
    public static SizeChange? ThicknessChange(Species species, RingOrientation rings, Length thickness, double fromPercent, double toPercent) =>
        Change(species, RingMovement.ThicknessAngleDegrees(rings), thickness, fromPercent, toPercent);

    private static SizeChange? Change(Species species, double angleDegrees, Length size, double fromPercent, double toPercent)
    {
        ArgumentNullException.ThrowIfNull(species);
        ArgumentOutOfRangeException.ThrowIfLessThan(size, Length.Zero);
        ArgumentOutOfRangeException.ThrowIfNegative(fromPercent);
        ArgumentOutOfRangeException.ThrowIfNegative(toPercent);

        if (HoldsForCoefficient(fromPercent) && HoldsForCoefficient(toPercent)
            && species is { CoefficientRadial: { } radial, CoefficientTangential: { } tangential })
        {
            double coefficient = RingMovement.AtRingAngle(radial, tangential, angleDegrees);
            return new SizeChange(
                Movement.WidthChangeByCoefficient(size.Millimetres, coefficient, toPercent - fromPercent), MovementModel.ByCoefficient, species.Sources.Coefficients);
        }

        if (species is { ShrinkageRadialPercent: { } shrinkageRadial, ShrinkageTangentialPercent: { } shrinkageTangential })
        {
            double shrinkage = RingMovement.AtRingAngle(shrinkageRadial, shrinkageTangential, angleDegrees);
            double from = Math.Min(fromPercent, SpecificGravity.FibreSaturationPercent), to = Math.Min(toPercent, SpecificGravity.FibreSaturationPercent);
            return new SizeChange(
                Movement.WidthChangeByShrinkage(size.Millimetres, shrinkage, from, to), MovementModel.ByShrinkage, species.Sources.Shrinkage);
        }

        return null;
    }

    private static bool HoldsForCoefficient(double moisturePercent) => moisturePercent is >= CoefficientFromPercent and <= CoefficientToPercent;
}
