using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Shops;

public sealed class ShopClimatesTests
{
    private static readonly OwnClimate Cellar = new("Cellar", [.. Enumerable.Repeat(new ClimateMonth(15, 65), 12)]);

    [Fact]
    public void The_default_shop_has_a_climate() => Assert.Equal("heated-temperate", ShopClimates.Find(new Shop(), "")!.Key);

    [Theory]
    [InlineData("shed-cold", "shed-cold")]
    [InlineData(" Shed-Cold ", "shed-cold")]
    [InlineData("cellar", "Cellar")]
    [InlineData("", "Cellar")]
    public void Find_takes_keys_own_names_and_nothing(string name, string key) =>
        Assert.Equal(key, ShopClimates.Find(new Shop { OwnClimates = [Cellar], Climate = "CELLAR" }, name)!.Key);

    [Fact]
    public void An_own_climate_is_worked_with() =>
        Assert.Equal(EquilibriumMoisture.Percent(15, 65), ShopClimates.Find(new Shop { OwnClimates = [Cellar] }, "cellar")!.MeanPercent, 1e-9);

    [Fact]
    public void An_own_climate_goes_before_the_table() =>
        Assert.Equal("tropical", ShopClimates.Find(new Shop { OwnClimates = [Cellar with { Name = "tropical" }] }, "tropical")!.Title);

    [Fact]
    public void An_unknown_or_unfinished_climate_is_null()
    {
        Assert.Null(ShopClimates.Find(new Shop(), "moon"));
        Assert.Null(ShopClimates.Find(new Shop { OwnClimates = [Cellar with { Months = [] }] }, "cellar"));
    }

    [Fact]
    public void All_begins_with_the_makers_own()
    {
        var all = ShopClimates.All(new Shop { OwnClimates = [Cellar, Cellar with { Name = "Half", Months = [] }] });

        Assert.Equal("Cellar", all[0].Key);
        Assert.Equal(ClimateTable.All.Length + 1, all.Length);
    }
}
