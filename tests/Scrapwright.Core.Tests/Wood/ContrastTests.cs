using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

public sealed class ContrastTests
{
    [Fact]
    public void Maple_beside_walnut_is_strong_and_much_lighter()
    {
        var contrast = Contrast.Between(SpeciesTable.Get("black-walnut").Colour, SpeciesTable.Get("sugar-maple").Colour);

        Assert.Equal(ContrastGrade.Strong, contrast.Grade);
        Assert.Equal("strong contrast, much lighter", contrast.InWords);
    }

    [Fact]
    public void A_colour_beside_itself_has_no_contrast()
    {
        LabColour cherry = SpeciesTable.Get("black-cherry").Colour;

        Assert.Equal("no contrast", Contrast.Between(cherry, cherry).InWords);
    }

    [Fact]
    public void Turned_round_the_lightness_changes_sign_and_the_difference_stays()
    {
        LabColour ash = SpeciesTable.Get("white-ash").Colour, teak = SpeciesTable.Get("teak").Colour;

        var there = Contrast.Between(ash, teak);
        var back = Contrast.Between(teak, ash);

        Assert.Equal(there.Difference, back.Difference, 1e-12);
        Assert.Equal(there.LightnessDifference, -back.LightnessDifference);
        Assert.Contains("darker", there.InWords, StringComparison.Ordinal);
        Assert.Contains("lighter", back.InWords, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(50, 60, true)]
    [InlineData(60, 50, true)]
    [InlineData(50, 59.9, false)]
    public void Without_colour_only_lightness_counts(double first, double second, bool apart)
    {
        // Red against green: far apart for most eyes, whatever the lightness.
        var contrast = Contrast.Between(new LabColour(first, 30, 20), new LabColour(second, -30, 20));

        Assert.Equal(ContrastGrade.Strong, contrast.Grade);
        Assert.Equal(apart, contrast.StandsApartWithoutColour);
        Assert.Equal(apart ? "told apart without colour" : "not told apart without colour", contrast.WithoutColourInWords);
    }
}
