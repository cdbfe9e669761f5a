namespace Scrapwright.Core.Wood;

/// <summary>The moisture content wood settles at in still air, and the air it settled in.</summary>
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
        ThrowUnlessInTable(temperatureCelsius);
        ArgumentOutOfRangeException.ThrowIfNegative(relativeHumidityPercent);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(relativeHumidityPercent, 100);
        return Percent(HydrateConstants.At(temperatureCelsius), relativeHumidityPercent / 100);
    }

    /// <summary>The relative humidity at which wood keeps a moisture content: the inverse of <see cref="Percent(double, double)"/>.</summary>
    /// <param name="temperatureCelsius">Temperature of the air. [°C], −1.1 to 132.2</param>
    /// <param name="moisturePercent">Moisture content by dry mass. [%], 0 to the equilibrium in saturated air, which is about 29 at 20 °C.</param>
    /// <returns>Relative humidity. [%], 0 to 100, within 10⁻⁹.</returns>
    /// <remarks>Eq. 4-5 of [WoodHandbook], solved by halving: moisture rises with humidity, so there is one answer.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Temperature outside the range, or moisture that no air gives at this temperature.</exception>
    public static double RelativeHumidityPercent(double temperatureCelsius, double moisturePercent)
    {
        ThrowUnlessInTable(temperatureCelsius);
        ArgumentOutOfRangeException.ThrowIfNegative(moisturePercent);
        HydrateConstants constants = HydrateConstants.At(temperatureCelsius);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(moisturePercent, Percent(constants, 1));

        double low = 0, high = 1;
        // Definition: 40 halvings leave 10⁻¹² of the range.
        for (int halving = 0; halving < 40; halving++)
        {
            double middle = (low + high) / 2;
            if (Percent(constants, middle) < moisturePercent)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return (low + high) / 2 * 100;
    }

    // [WoodHandbook], eq. 4-5; h is the humidity as a share of one.
    private static double Percent(in HydrateConstants constants, double h)
    {
        double kh = constants.K * h;
        double hydrates = constants.K1 * kh + constants.K1 * constants.K2 * kh * kh;
        return 1800 / constants.W * (kh / (1 - kh) + (hydrates + constants.K1 * constants.K2 * kh * kh) / (1 + hydrates));
    }

    // [WoodHandbook], Table 4-2 begins at 30 °F, which is −1.11 °C, and ends at 270 °F.
    private static void ThrowUnlessInTable(double temperatureCelsius)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(temperatureCelsius, -1.12);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(temperatureCelsius, 132.3);
    }

    private readonly record struct HydrateConstants(double W, double K, double K1, double K2)
    {
        // [WoodHandbook], eq. 4-5, the constants for °C.
        internal static HydrateConstants At(double t) => new(
            349 + 1.29 * t + 0.0135 * t * t,
            0.805 + 0.000736 * t - 0.00000273 * t * t,
            6.27 - 0.00938 * t - 0.000303 * t * t,
            1.91 + 0.0407 * t - 0.000293 * t * t);
    }
}
