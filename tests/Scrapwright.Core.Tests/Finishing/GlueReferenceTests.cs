using Scrapwright.Core.Finishing;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Finishing;

public sealed class GlueReferenceTests
{
    // [GlueChart]: open and clamp time in minutes of white, yellow and cross-linking PVA, liquid hide glue. [CanadianGlues]: white 3 to 5, yellow 5 to 6.
    // [MakersSheets]: PVA 30 to 60 in the clamps, polyurethane at least 45.
    [Theory]
    [InlineData("white-glue", 5, 60)] // GlueChart, white
    [InlineData("white-glue", 5, 30)] // GlueChart, yellow
    [InlineData("white-glue", 3, 30)] // CanadianGlues, white, lower end
    [InlineData("white-glue", 6, 60)] // CanadianGlues, yellow, upper end
    [InlineData("water-resistant-glue", 5, 60)] // GlueChart, cross-linking
    [InlineData("hide-glue", 10, 720)] // GlueChart, liquid hide glue
    [InlineData("polyurethane-glue", 15, 45)] // MakersSheets; open time from memory
    public void Bands_hold_the_published_times(string key, int openMinutes, int clampMinutes)
    {
        var glue = GlueTable.Find(key)!;

        Assert.InRange(openMinutes, glue.OpenMinutes.Least, glue.OpenMinutes.Most);
        Assert.InRange(clampMinutes, glue.ClampMinutes.Least, glue.ClampMinutes.Most);
    }

    // 1 psi = 6.894757 kPa. [ClampArticle2021]: softwoods 100 to 150, hardwoods 175 to 250 psi. [MakersSheets]: medium 150 to 200, hard 200 to 300. Medium from 125 psi: memory.
    [Theory]
    [InlineData(DensityClass.Low, 100, 150)]
    [InlineData(DensityClass.Medium, 125, 200)]
    [InlineData(DensityClass.High, 175, 300)]
    public void Pressures_are_the_published_ones_to_ten_kilopascals(DensityClass density, double leastPsi, double mostPsi)
    {
        var band = GlueTable.Find("white-glue")!.Kilopascals(density);

        Assert.Equal(leastPsi * 6.894757, band.Least, 5.0);
        Assert.Equal(mostPsi * 6.894757, band.Most, 5.0);
    }

    // 30 and 50 lb per 1000 ft² of single glue line; 0.45359237 kg and 92.90304 m² by definition. The 30 and 50 are from memory.
    [Fact]
    public void Spread_is_the_customary_one_in_grams()
    {
        var band = GlueTable.Find("white-glue")!.SpreadGramsPerM2;

        Assert.Equal(30 * 453.59237 / 92.90304, band.Least, 0.5);
        Assert.Equal(50 * 453.59237 / 92.90304, band.Most, 0.5);
    }

    // [NavyPatternMaking]: above 50 °F. [GlueBasics2009]: white above 60, polyurethane down to 50, epoxy above 70 °F. To the nearest degree Celsius.
    [Theory]
    [InlineData("white-glue", 50, 60)]
    [InlineData("polyurethane-glue", 50, 50)]
    [InlineData("epoxy", 50, 70)]
    public void Least_temperatures_are_the_published_ones(string key, double leastFahrenheit, double mostFahrenheit)
    {
        var band = GlueTable.Find(key)!.MinimumCelsius;

        Assert.Equal((leastFahrenheit - 32) / 1.8, band.Least, 0.5);
        Assert.Equal((mostFahrenheit - 32) / 1.8, band.Most, 0.5);
    }

    // [MakersSheets]: pine, poplar; cherry, soft maple; oak, birch. [WoodHandbook] Table 5-3b gives their specific gravities.
    [Theory]
    [InlineData("eastern-white-pine", DensityClass.Low)]
    [InlineData("yellow-poplar", DensityClass.Low)]
    [InlineData("black-cherry", DensityClass.Medium)]
    [InlineData("red-maple", DensityClass.Medium)]
    [InlineData("northern-red-oak", DensityClass.High)]
    [InlineData("yellow-birch", DensityClass.High)]
    public void Woods_fall_into_the_classes_of_the_makers_sheets(string species, DensityClass density) =>
        Assert.Equal(density, DensityClasses.Of(SpeciesTable.Get(species)));

    [Fact]
    public void Every_figure_of_every_glue_has_a_source()
    {
        Assert.NotEmpty(GlueTable.All);
        Assert.Equal(GlueTable.All.Length, GlueTable.All.Select(g => g.Key).Distinct().Count());
        Assert.All(GlueTable.All, glue =>
        {
            var sources = glue.Sources;
            Assert.All(
                [sources.Water, sources.Open, sources.Clamp, sources.Cure, sources.Minimum, sources.Spread, sources.Low, sources.Medium, sources.High],
                one => Assert.NotEmpty(one));
            Assert.True(glue.OpenMinutes.Least > 0 && glue.ClampMinutes.Least > glue.OpenMinutes.Least, glue.Key);
            Assert.True(glue.CureHours.Most * 60 >= glue.ClampMinutes.Most, glue.Key);
        });
    }

    [Theory]
    [InlineData("White-Glue ", true)]
    [InlineData("", false)]
    [InlineData("the blue bottle", false)]
    public void A_glue_is_found_by_its_key_only(string text, bool found) => Assert.Equal(found, GlueTable.Find(text) is not null);
}
