using Scrapwright.Core.Finishing;

namespace Scrapwright.Core.Tests.Finishing;

public sealed class FinishReferenceTests
{
    // [MakersSheets]: tung oil 400 ft² a gallon (0.09290304 m² and 3.785411784 L by definition). [DanishOilArticle]: about 12.5 m²/L.
    [Theory]
    [InlineData("drying-oil", 400 * 0.09290304 / 3.785411784)]
    [InlineData("drying-oil", 12.5)]
    [InlineData("oil-varnish", 12.5)]
    public void Coverage_holds_the_published_figure(string key, double squareMetresPerLitre)
    {
        var band = FinishTable.Find(key)!.CoverageM2PerLitre;

        Assert.InRange(squareMetresPerLitre, band.Least, band.Most);
    }

    // [DanishOilArticle]: 4 to 24 h. [HardWaxPage]: 8 to 10 h, some 24 h. [BoardOilPage]: six hours at least.
    [Theory]
    [InlineData("oil-varnish", 4, 24)]
    [InlineData("hard-wax", 8, 24)]
    [InlineData("oil-wax", 6, 24)]
    public void The_next_coat_waits_as_published(string key, int leastHours, int mostHours) =>
        Assert.Equal(new Band(leastHours * 60, mostHours * 60), FinishTable.Find(key)!.RecoatMinutes);

    // Chemistry, not a table: linseed and tung oil and what is made from them take up oxygen [NfpaOilyRags]; water, alcohol and mineral oil do not.
    [Theory]
    [InlineData("drying-oil", true)]
    [InlineData("oil-varnish", true)]
    [InlineData("hard-wax", true)]
    [InlineData("oil-wax", false)]
    [InlineData("shellac", false)]
    [InlineData("waterborne-varnish", false)]
    public void Drying_oils_are_marked(string key, bool drying) => Assert.Equal(drying, FinishTable.Find(key)!.IsDryingOil);

    [Fact]
    public void Every_figure_of_every_finish_has_a_source()
    {
        Assert.Equal(6, FinishTable.All.Select(f => f.Key).Distinct().Count());
        Assert.All(FinishTable.All, finish =>
        {
            var sources = finish.Sources;
            Assert.All(
                [sources.Coats, sources.Coverage, sources.Recoat, sources.Handle, sources.Food, sources.Cure, sources.Temperature, sources.LastGrit],
                one => Assert.NotEmpty(one));
            Assert.True(finish is { Coats: > 0, CoverageM2PerLitre.Least: > 0 }, finish.Key);
        });
    }

    [Theory]
    [InlineData(" Shellac", true)]
    [InlineData("", false)]
    [InlineData("what grandfather used", false)]
    public void A_finish_is_found_by_its_key_only(string text, bool found) => Assert.Equal(found, FinishTable.Find(text) is not null);
}
