using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

public sealed class ColourChangeTests
{
    public static TheoryData<string> Keys => [.. SpeciesTable.All.Select(species => species.Key)];

    [Theory]
    [MemberData(nameof(Keys))]
    public void Every_species_has_colours_that_a_screen_can_show(string key)
    {
        Species species = SpeciesTable.Get(key);
        LabColour oiled = ColourChange.Oiled(species.Colour), aged = ColourChange.Aged(species);

        Assert.True(oiled.IsInSrgbGamut);
        Assert.True(aged.IsInSrgbGamut);
        Assert.True(oiled.L < species.Colour.L);
        Assert.True(oiled.Chroma > species.Colour.Chroma);
        Assert.InRange(ColourDifference.Ciede2000(species.Colour, aged), 1, 25);
        Assert.NotEmpty(ColourChange.AgedInWords(species));
    }

    // Common practice, no source: which way these woods go.
    [Fact]
    public void Woods_age_the_way_makers_know()
    {
        Assert.True(Change("black-cherry").L < -5);
        Assert.True(Change("black-cherry").A > 0);
        Assert.True(Change("black-walnut").L > 0);
        Assert.True(Change("sugar-maple").B > 0);
        Assert.True(Change("purpleheart").A < 0 && Change("purpleheart").B > 0);
        Assert.True(Change("african-padauk").A < 0 && Change("african-padauk").L < 0);

        static LabColour Change(string key)
        {
            LabColour fresh = SpeciesTable.Get(key).Colour, aged = ColourChange.Aged(SpeciesTable.Get(key));
            return new LabColour(aged.L - fresh.L, aged.A - fresh.A, aged.B - fresh.B);
        }
    }
}
