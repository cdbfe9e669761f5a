using CsCheck;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

public sealed class EquilibriumMoistureTests
{
    [Fact]
    public void Damper_air_means_damper_wood() =>
        Gen.Select(Gen.Double[-1, 130], Gen.Double[0, 99], Gen.Double[0.01, 1]).Sample((temperature, humidity, more) =>
            EquilibriumMoisture.Percent(temperature, humidity + more) > EquilibriumMoisture.Percent(temperature, humidity));

    [Fact]
    public void Dry_air_dries_wood_out() => Assert.Equal(0, EquilibriumMoisture.Percent(20, 0));

    [Theory]
    [InlineData(-5, 50)]
    [InlineData(140, 50)]
    [InlineData(20, -1)]
    [InlineData(20, 101)]
    [InlineData(double.NaN, 50)]
    [InlineData(20, double.NaN)]
    public void Outside_the_source_it_refuses(double temperatureCelsius, double relativeHumidityPercent) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => EquilibriumMoisture.Percent(temperatureCelsius, relativeHumidityPercent));

    [Fact]
    public void The_inverse_undoes_the_equation() =>
        Gen.Select(Gen.Double[-1, 130], Gen.Double[0, 100]).Sample((temperature, humidity) =>
            Math.Abs(EquilibriumMoisture.RelativeHumidityPercent(temperature, EquilibriumMoisture.Percent(temperature, humidity)) - humidity) < 1e-8);

    [Theory]
    [InlineData(-5, 8)]
    [InlineData(140, 8)]
    [InlineData(20, -1)]
    [InlineData(20, 40)]
    [InlineData(double.NaN, 8)]
    [InlineData(20, double.NaN)]
    public void The_inverse_refuses_what_no_air_gives(double temperatureCelsius, double moisturePercent) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => EquilibriumMoisture.RelativeHumidityPercent(temperatureCelsius, moisturePercent));
}
