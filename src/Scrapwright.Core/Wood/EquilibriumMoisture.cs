namespace Scrapwright.Core.Wood;

/// <summary>The moisture content wood settles at in still air.</summary>
public static class EquilibriumMoisture
{
    /// <summary>Equilibrium moisture content by the two-hydrate Hailwood–Horrobin equation.</summary>
    /// <param name="temperatureCelsius">Temperature of the air. [°C], −1.1 to 132.2 in the source's table; outside it extrapolates and is refused.</param>
    /// <param name="relativeHumidityPercent">Relative humidity. [%], 0 to 100; the table has 5 to 95.</param>
    /// <returns>Moisture content by dry mass. [%], not rounded; a whole per cent is about what it is worth.</returns>
    /// <remarks>
    /// EMC = 1800/W · [Kh/(1 − Kh) + (K₁Kh + 2K₁K₂K²h²)/(1 + K₁Kh + K₁K₂K²h²)]. Source: [WoodHandbook], eq. 4-5 with its constants for °C.
    /// Mainly from Sitka spruce, midway between gaining and losing moisture.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Temperature or humidity outside the ranges above.</exception>
    public static double Percent(double temperatureCelsius, double relativeHumidityPercent)
    {
        // The table begins at 30 °F, which is −1.11 °C.
        ArgumentOutOfRangeException.ThrowIfLessThan(temperatureCelsius, -1.12);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(temperatureCelsius, 132.3);
        ArgumentOutOfRangeException.ThrowIfNegative(relativeHumidityPercent);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(relativeHumidityPercent, 100);

        double t = temperatureCelsius, h = relativeHumidityPercent / 100;
        double w = 349 + 1.29 * t + 0.0135 * t * t;
        double k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
        double k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
        double k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
        double kh = k * h;
        double hydrates = k1 * kh + k1 * k2 * kh * kh;
        return 1800 / w * (kh / (1 - kh) + (hydrates + k1 * k2 * kh * kh) / (1 + hydrates));
    }
}
