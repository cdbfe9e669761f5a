using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

public sealed class WoodFactsTests
{
    // [WoodHandbook] eq. 13-2 by hand: walnut, 101.6 mm, 6 per cent of change: 0.00274 and 0.00190 give 1.670304 and 1.15824 mm.
    [Fact]
    public void Walnut_on_one_page()
    {
        var facts = WoodFacts.For(SpeciesTable.Get("black-walnut"));

        Assert.Equal(Length.FromMillimetresRounded(1.670304), facts.FlatMovement);
        Assert.Equal(Length.FromMillimetresRounded(1.15824), facts.QuarterMovement);
        Assert.Equal(["Movement", "Density", "Hardness", "Colour", "Botanical name"], facts.Sources.Select(line => line.Value));
        Assert.Equal(DustMask.Finest, facts.DustCare.Mask);
        Assert.Contains(facts.DustLimits, limit => limit.Key == "hse-hardwood");
        Assert.True(facts.Oiled.L < facts.Fresh.L && facts.Aged.L > facts.Fresh.L);
        Assert.Contains("lightens", facts.AgedInWords, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_known_is_left_out()
    {
        var facts = WoodFacts.For(SpeciesTable.Get("ovangkol"));

        Assert.Null(facts.FlatMovement);
        Assert.Null(facts.QuarterMovement);
        Assert.Equal(["Density", "Colour", "Botanical name"], facts.Sources.Select(line => line.Value));
    }
}
