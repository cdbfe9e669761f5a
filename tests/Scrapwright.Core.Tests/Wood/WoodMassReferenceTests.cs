using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

public sealed class WoodMassReferenceTests
{
    private static readonly Volume Litre = Volume.Of(Length.FromMillimetres(100), Length.FromMillimetres(100), Length.FromMillimetres(100));

    // [WoodHandbook] ch. 4, densities at a specific gravity and moisture content, from memory: 0.50 at 12 % is 560 kg/m³, 0.60 at 12 % is 672. Both stand on the volume at 12 %.
    [Theory]
    [InlineData("black-cherry", 560)]
    [InlineData("white-ash", 672)]
    public void At_twelve_per_cent_the_printed_density_is_met(string key, double grams) =>
        Assert.Equal(grams, WoodMass.GramsOf(SpeciesTable.Get(key), Litre, 12), 0.001);

    // [WoodHandbook] Table 5-3b prints specific gravity on the green volume too: at 30 % a litre holds that much dry wood. The formula is a mean: within 0.03 of the printed value.
    [Theory]
    [InlineData("black-walnut", 0.51)]
    [InlineData("sugar-maple", 0.56)]
    [InlineData("black-cherry", 0.47)]
    [InlineData("white-oak", 0.60)]
    [InlineData("yellow-poplar", 0.40)]
    [InlineData("eastern-white-pine", 0.34)]
    public void At_saturation_the_green_specific_gravity_is_met(string key, double basic) =>
        Assert.Equal(basic, WoodMass.GramsOf(SpeciesTable.Get(key), Litre, 30) / 1300, 0.03);

    // Wood is conserved: a piece measured at two moistures has one mass of dry wood. Its volume changes by the shrinkage that the specific gravities mean.
    [Fact]
    public void Drying_loses_water_only() => Gen.Select(Gen.Double[0, 30], Gen.Double[0, 30]).Sample((one, other) =>
    {
        Species walnut = SpeciesTable.Get("black-walnut");
        double volumeRatio = SpecificGravity.FromTable(0.55, one) / SpecificGravity.FromTable(0.55, other);
        double dryAtOne = WoodMass.GramsOf(walnut, Litre, one) / (1 + one / 100);
        double dryAtOther = WoodMass.GramsOf(walnut, Litre, other) / (1 + other / 100) * volumeRatio;
        return Math.Abs(dryAtOne - dryAtOther) < 1e-6;
    });

    [Fact]
    public void The_table_carried_to_twelve_per_cent_is_itself() => Gen.Double[0.2, 1.2].Sample(gravity =>
        Math.Abs(SpecificGravity.FromTable(gravity, 12) - gravity) < 1e-12);

    [Theory]
    [InlineData(-1)]
    [InlineData(31)]
    public void Moisture_outside_the_model_is_refused(double moisturePercent) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WoodMass.GramsOf(SpeciesTable.Get("black-walnut"), Litre, moisturePercent));
}
