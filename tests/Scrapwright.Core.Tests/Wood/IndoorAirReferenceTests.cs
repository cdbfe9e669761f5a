using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

public sealed class IndoorAirReferenceTests
{
    // [En15026] Annex C, normal occupancy, as two public programs carry it: both have the humidities, one the temperatures.
    [Theory]
    [InlineData(-10, 20, 30)]
    [InlineData(-5, 20, 35)]
    [InlineData(15, 22.5, 55)]
    [InlineData(25, 25, 60)]
    public void A_heated_home_follows_the_standard(double outdoorCelsius, double indoorCelsius, double humidityPercent)
    {
        ClimateMonth indoors = IndoorAir.Heated(outdoorCelsius);

        Assert.Equal(indoorCelsius, indoors.TemperatureCelsius, 1e-9);
        Assert.Equal(humidityPercent, indoors.RelativeHumidityPercent, 1e-9);
    }

    // Saturation pressures from steam tables, from memory: 2339 Pa at 20 °C, 3169 Pa at 25 °C, 7384 Pa at 40 °C.
    [Fact]
    public void Desert_air_keeps_its_water_indoors()
    {
        ClimateMonth indoors = IndoorAir.Cooled(new ClimateMonth(40, 10));

        Assert.Equal(25, indoors.TemperatureCelsius);
        Assert.Equal(10 * 7384.0 / 3169, indoors.RelativeHumidityPercent, 0.1);
    }

    [Fact]
    public void A_cooler_keeps_damp_air_at_half() => Assert.Equal(50, IndoorAir.Cooled(new ClimateMonth(30, 80)).RelativeHumidityPercent);
}
