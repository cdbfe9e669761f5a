using Bunit;
using Scrapwright.Client.Api;
using Scrapwright.Client.Shops;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Client.Tests.Shops;

public sealed class AirGroupTests : ScreenContext
{
    private static readonly OwnClimate Cellar = new("Cellar", [.. Enumerable.Repeat(new ClimateMonth(15, 65), 12)]);

    [Fact]
    public async Task The_chosen_climate_is_saved_and_its_year_shown()
    {
        var page = await ShowAsync();

        page.Find("#climate").Change("shed-cold");

        Assert.Equal("shed-cold", Far.Shop.Climate);
        var january = page.Find("#air .months tbody tr");
        Assert.Equal(["16 °F", "70 %"], january.QuerySelectorAll("td.number").Take(2).Select(cell => cell.TextContent));
        Assert.Equal($"{ClimateTable.Find("shed-cold")!.MoisturePercent(1):0} %", january.QuerySelector(".wood-moisture")!.TextContent);
    }

    [Fact]
    public async Task An_own_climate_begins_as_the_chosen_one_and_is_written_month_by_month()
    {
        var page = await ShowAsync();

        page.Find("#add-climate").Click();
        page.Find("[aria-label='January, temperature']").Change("50");
        page.Find("[aria-label='January, humidity']").Change("61.5 %");

        var own = Assert.Single(Far.Shop.OwnClimates);
        Assert.Equal(new ClimateMonth(10, 61.5), own.Months[0]);
        Assert.Equal(ClimateTable.Find("heated-temperate")!.Months[1], own.Months[1]);
    }

    [Theory]
    [InlineData("temperature", "hot", "expected a temperature such as 68 °F")]
    [InlineData("humidity", "101", "expected a humidity from 0 to 100 %")]
    public async Task A_month_that_makes_no_sense_is_told_and_not_saved(string what, string text, string said)
    {
        Far.Shop = new Shop { OwnClimates = [Cellar] };
        var page = await ShowAsync();

        page.Find($"[aria-label='March, {what}']").Change(text);

        Assert.Contains($"March: found “{text}”, {said}", page.Find("#own-0-problem").TextContent);
        Assert.Equal("true", page.Find($"[aria-label='March, {what}']").GetAttribute("aria-invalid"));
        Assert.Equal(Cellar.Months, Far.Shop.OwnClimates[0].Months);
    }

    [Fact]
    public async Task Another_name_is_carried_to_the_shop_and_the_gifts()
    {
        Far.Shop = new Shop { OwnClimates = [Cellar], Climate = "cellar" };
        Far.Gifts.Add(new(7, new Gift { Label = "Ada", Design = "striped-squares", Climate = "Cellar" }));
        var page = await ShowAsync();

        page.Find("#own-name-0").Change("Vault");
        page.WaitForAssertion(() => Assert.Equal("Vault", Assert.Single(Far.Shop.OwnClimates).Name));

        Assert.Equal(("Vault", "Vault"), (Far.Shop.Climate, Far.Gifts[0].Gift.Climate));
    }

    [Fact]
    public async Task A_climate_that_a_gift_lives_in_is_not_removed()
    {
        Far.Shop = new Shop { OwnClimates = [Cellar] };
        Far.Gifts.Add(new(7, new Gift { Label = "Ada", Design = "striped-squares", Climate = "Cellar" }));
        var page = await ShowAsync();

        page.Find(".own-climate button").Click();

        Assert.Contains("Cellar is where Ada will live", page.Find("#air [role=alert]").TextContent);
        Assert.Single(Far.Shop.OwnClimates);
    }

    [Fact]
    public async Task The_moisture_of_the_pile_may_be_left_empty()
    {
        Far.Shop = new Shop { PileMoisturePercent = 11 };
        var page = await ShowAsync();

        page.Find("#pile-moisture").Change("3");
        Assert.Contains("Found “3”, expected 4 to 30 %, or nothing", page.Find("#pile-moisture-hint").TextContent);
        Assert.Equal(11, Far.Shop.PileMoisturePercent);

        page.Find("#pile-moisture").Change("");
        Assert.Null(Far.Shop.PileMoisturePercent);
    }

    [Fact]
    public async Task The_force_of_a_clamp_is_taken_in_pounds()
    {
        var page = await ShowAsync();

        Assert.Equal("899 lb", page.Find("#clamp-force-0").GetAttribute("value"));
        page.Find("#clamp-force-0").Change("500");

        Assert.Equal(2224, Far.Shop.Clamps[0].ForceNewtons);
    }

    private async Task<IRenderedComponent<ShopPage>> ShowAsync()
    {
        await Workshop.LoadAsync();
        return Render<ShopPage>();
    }
}
