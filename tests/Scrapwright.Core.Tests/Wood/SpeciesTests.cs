using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

public sealed class SpeciesTests
{
    public static TheoryData<string> Keys => [.. SpeciesTable.All.Select(species => species.Key)];

    [Fact]
    public void There_are_at_least_forty_five() => Assert.True(SpeciesTable.All.Length >= 45, $"{SpeciesTable.All.Length}");

    [Theory]
    [MemberData(nameof(Keys))]
    public void Values_lie_where_those_of_wood_lie(string key)
    {
        Species species = SpeciesTable.Get(key);

        Assert.InRange(species.SpecificGravity12, 0.2, 1.2);
        Assert.InRange(species.DensityKgPerM3, 224, 1344);
        Assert.InRange(species.SideHardnessLbf ?? 1000, 300, 4000);
        Assert.InRange(species.CoefficientRadial ?? 0.001, 0.0005, 0.006);
        Assert.InRange(species.CoefficientTangential ?? 0.001, 0.0005, 0.006);
        Assert.True(!(species.ShrinkageTangentialPercent < species.ShrinkageRadialPercent));
        Assert.True(!(species.CoefficientTangential < species.CoefficientRadial));
        Assert.True(!(species.ShrinkageVolumetricPercent < species.ShrinkageTangentialPercent));
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_value_has_a_source_and_a_source_has_a_value(string key)
    {
        Species species = SpeciesTable.Get(key);

        Assert.Equal(species.ShrinkageRadialPercent is null, species.Sources.Shrinkage is null);
        Assert.Equal(species.ShrinkageTangentialPercent is null, species.Sources.Shrinkage is null);
        Assert.Equal(species.ShrinkageVolumetricPercent is null, species.Sources.VolumetricShrinkage is null);
        Assert.Equal(species.CoefficientRadial is null, species.Sources.Coefficients is null);
        Assert.Equal(species.CoefficientTangential is null, species.Sources.Coefficients is null);
        Assert.Equal(species.SideHardnessLbf is null, species.Sources.SideHardness is null);
        Assert.NotEmpty(species.ScientificName);
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void The_colour_is_a_marked_estimate_that_a_screen_can_show(string key)
    {
        Species species = SpeciesTable.Get(key);

        Assert.True(species.ColourIsEstimate);
        Assert.True(species.Colour.IsInSrgbGamut);
        Assert.Matches("^#[0-9a-f]{6}$", species.DisplayHex);
        Assert.InRange(species.Colour.L, 24, 90);
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Every_caution_ends_in_its_source(string key) =>
        Assert.All(SpeciesTable.Get(key).Cautions, caution => Assert.Matches(@"(\[\w+\]|Common practice, no source|From memory)$", caution));
}
