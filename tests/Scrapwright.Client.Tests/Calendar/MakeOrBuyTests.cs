using Bunit;
using Scrapwright.Client.Calendar;
using Scrapwright.Client.Shops;
using Scrapwright.Core.Calendar.Worth;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Plans;

namespace Scrapwright.Client.Tests.Calendar;

public sealed class MakeOrBuyTests : ScreenContext
{
    [Fact]
    public void Opened_it_says_the_figures_what_they_say_and_what_has_to_fit()
    {
        Far.Worth = WorthAnswer.Of(new()
        {
            Plan = ExamplePlans.Squares,
            HourWorth = new(12, "€"),
            Prices = [new(PriceKind.Gift, "Ida", 0.50m, 3), new(PriceKind.Item, "drill bits", 1, 0)],
        });
        var page = Render<MakeOrBuy>();
        Assert.Empty(Far.Requests);

        page.Find("details").TriggerEvent("ontoggle", EventArgs.Empty);

        page.WaitForAssertion(() => Assert.Contains("At €12.00 an hour of your time.", page.Markup));
        var things = page.FindAll(".worth-list")[^1];
        Assert.StartsWith("Buying costs €", things.QuerySelector(".worth-verdict")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Bought ones must fit:", things.TextContent);
        Assert.Contains("drill bits", page.Find(".notice.warning").TextContent);
    }

    [Fact]
    public void The_worth_of_an_hour_is_saved_and_a_wrong_one_is_told()
    {
        var group = Render<WorthGroup>();
        group.WaitForElement("#hour-worth").Change("free");
        group.WaitForAssertion(() => Assert.Contains("Found “free”, expected an amount above 0", group.Find("#hour-worth-hint").TextContent));
        Assert.Null(Far.Shop.HourWorth);

        group.Find("#hour-worth").Change("18,50");
        group.WaitForAssertion(() => Assert.Equal(new HourWorth(18.50m), Far.Shop.HourWorth));
        group.Find("#hour-currency").Change("€");
        group.WaitForAssertion(() => Assert.Equal(new HourWorth(18.50m, "€"), Far.Shop.HourWorth));
        group.Find("#hour-worth").Change("");
        group.WaitForAssertion(() => Assert.Null(Far.Shop.HourWorth));
    }

    [Fact]
    public void Prices_are_added_and_removed_and_a_jig_is_marked_as_there()
    {
        var group = Render<WorthGroup>();
        group.WaitForElement("#price-name").Change("pond-squares");
        group.Find("#price-amount").Change("38.50");
        group.Find("#price-days").Change("4");
        group.Find(".price-new").Submit();
        group.WaitForAssertion(() => Assert.Equal(new Price(PriceKind.Gift, "pond-squares", 38.50m, 4), Assert.Single(Far.Prices)));

        group.WaitForElement(".price-row button").Click();
        group.WaitForAssertion(() => Assert.Empty(Far.Prices));

        group.Find("#jig-stop-block").Change(true);
        group.WaitForAssertion(() => Assert.True(Assert.Single(Far.Jigs).IsOwned));
    }

    [Fact]
    public void A_price_that_is_none_is_told_and_not_kept()
    {
        var group = Render<WorthGroup>();
        group.WaitForElement("#price-name").Change("pond-squares");
        group.Find("#price-amount").Change("cheap");

        group.Find(".price-new").Submit();

        group.WaitForAssertion(() => Assert.Equal("Found “cheap”, expected an amount such as 12.50.", group.Find(".price-new .problem").TextContent));
        Assert.Empty(Far.Prices);
    }
}
