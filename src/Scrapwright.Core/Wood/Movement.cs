namespace Scrapwright.Core.Wood;

/// <summary>How much wood swells and shrinks across the grain. Two models, two names; they disagree where the source's tables do.</summary>
public static class Movement
{
    /// <summary>Change of width across the grain for a small moisture change.</summary>
    /// <param name="widthMm">Width at the start. [mm]</param>
    /// <param name="coefficientPerPercent">Dimensional change coefficient, radial or tangential as the width lies. [1/%]</param>
    /// <param name="moistureChangePercent">Final minus initial moisture content, by dry mass. [%], both within 6 to 14</param>
    /// <returns>Change of width, positive when it swells. [mm]</returns>
    /// <remarks>ΔW = W · C · ΔM. Assumes straight grain and no restraint. Source: [WoodHandbook], eq. 13-2.</remarks>
    public static double WidthChangeByCoefficient(double widthMm, double coefficientPerPercent, double moistureChangePercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(widthMm);
        ArgumentOutOfRangeException.ThrowIfNegative(coefficientPerPercent);
        return widthMm * coefficientPerPercent * moistureChangePercent;
    }

    /// <summary>Change of width across the grain for any moisture change below fibre saturation.</summary>
    /// <param name="widthMm">Width at the start. [mm]</param>
    /// <param name="shrinkagePercent">Shrinkage green to ovendry, radial or tangential as the width lies. [%]</param>
    /// <param name="fromPercent">Moisture content at the start. [%], 0 to 30</param>
    /// <param name="toPercent">Moisture content at the end. [%], 0 to 30</param>
    /// <returns>Change of width, positive when it swells. [mm]</returns>
    /// <remarks>
    /// ΔW = W · (M₂ − M₁) / (30 · 100/S − 30 + M₁): shrinkage in a straight line from 30 %. Assumes straight grain and no restraint.
    /// Source: [WoodHandbook], eq. 13-3; its form is from memory and follows from that straight line.
    /// </remarks>
    public static double WidthChangeByShrinkage(double widthMm, double shrinkagePercent, double fromPercent, double toPercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(widthMm);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(shrinkagePercent);
        ThrowUnlessBelowSaturation(fromPercent, nameof(fromPercent));
        ThrowUnlessBelowSaturation(toPercent, nameof(toPercent));
        return widthMm * (toPercent - fromPercent) / (30 * 100 / shrinkagePercent - 30 + fromPercent);
    }

    private static void ThrowUnlessBelowSaturation(double moisturePercent, string name)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(moisturePercent, name);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(moisturePercent, SpecificGravity.FibreSaturationPercent, name);
    }
}
