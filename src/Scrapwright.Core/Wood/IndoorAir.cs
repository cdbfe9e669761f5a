namespace Scrapwright.Core.Wood;

/// <summary>The air of a home, from the outdoor air of the month. Models for a year's design, not a forecast for one room.</summary>
public static class IndoorAir
{
    // An air conditioner takes water out until the air is about half saturated: estimate.
    private const double CooledAtMostPercent = 50;

    /// <summary>A heated home with normal use, from the mean outdoor temperature alone.</summary>
    /// <param name="outdoorCelsius">Mean outdoor temperature. [°C]</param>
    /// <returns>20 °C up to 10 °C outdoors, rising in a straight line to 25 °C at 20 °C; 30 % up to −10 °C outdoors, rising to 60 % at 20 °C.</returns>
    /// <remarks>
    /// Source: [En15026], Annex C, normal occupancy; from memory. Two public programs that carry it agree on the humidity; one of them has 22 °C instead of 25 °C as the
    /// upper temperature, which changes the wood's moisture by less than 0.2 %.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Not a number.</exception>
    public static ClimateMonth Heated(double outdoorCelsius)
    {
        ThrowUnlessNumber(outdoorCelsius, nameof(outdoorCelsius));
        return new ClimateMonth(HeatedCelsius(outdoorCelsius), Math.Clamp(40 + outdoorCelsius, 30, 60));
    }

    /// <summary>A home whose air is outdoor air brought to the indoor temperature of <see cref="Heated"/>; where that makes it damp, a cooler keeps it at 50 %.</summary>
    /// <param name="outdoor">Mean outdoor air.</param>
    /// <returns>Temperature and humidity indoors. The water that people, plants and kitchens add is left out.</returns>
    /// <remarks>The water vapour per volume stays: φᵢ = φₑ · p(tₑ)/p(tᵢ), p the saturation pressure. The 50 % are an estimate.</remarks>
    public static ClimateMonth Cooled(ClimateMonth outdoor)
    {
        double indoorCelsius = HeatedCelsius(outdoor.TemperatureCelsius);
        double carried = outdoor.RelativeHumidityPercent * SaturationRatio(outdoor.TemperatureCelsius, indoorCelsius);
        return new ClimateMonth(indoorCelsius, Math.Min(carried, CooledAtMostPercent));
    }

    // [En15026], as above.
    private static double HeatedCelsius(double outdoorCelsius) => Math.Clamp(20 + (outdoorCelsius - 10) / 2, 20, 25);

    // Magnus's formula over water with the constants of [Alduchov1996], from memory; within 0.4 % from −40 to 50 °C. Its factor 610.94 Pa falls out of the ratio.
    private static double SaturationRatio(double overCelsius, double underCelsius) => Math.Exp(Exponent(overCelsius) - Exponent(underCelsius));

    // [Alduchov1996], as above.
    private static double Exponent(double celsius) => 17.625 * celsius / (celsius + 243.04);

    private static void ThrowUnlessNumber(double celsius, string name)
    {
        if (double.IsNaN(celsius))
        {
            throw new ArgumentOutOfRangeException(name, celsius, "A temperature is a number.");
        }
    }
}
