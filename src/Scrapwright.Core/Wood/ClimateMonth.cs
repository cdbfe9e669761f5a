namespace Scrapwright.Core.Wood;

/// <summary>The air of one month where wood stands. <c>default</c> is 0 °C and bone dry.</summary>
/// <param name="TemperatureCelsius">Mean temperature. [°C]; −1.1 to 60 is worked with, colder counts as −1.1.</param>
/// <param name="RelativeHumidityPercent">Mean relative humidity. [%], 0 to 100.</param>
public readonly record struct ClimateMonth(double TemperatureCelsius, double RelativeHumidityPercent);
