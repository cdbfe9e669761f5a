using Bunit;
using Scrapwright.Client.Shops;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Shops;

namespace Scrapwright.Client.Tests.Shops;

public sealed class FinishingGroupsTests : ScreenContext
{
    [Fact]
    public async Task The_glue_is_chosen_by_name_and_its_figures_shown()
    {
        var page = await ShowAsync();

        page.Find("#glue-kind").Change("hide-glue");

        Assert.Equal("hide-glue", Far.Shop.Glue);
        Assert.Contains(Amounts.Minutes(GlueTable.Find("hide-glue")!.ClampMinutes), page.Find("#glue .facts-list").TextContent);
    }

    [Fact]
    public async Task An_oil_that_dries_warns_of_its_rags_and_another_finish_does_not()
    {
        var page = await ShowAsync();
        Assert.Equal(OilyRags.Caution, page.Find("#finish .doubt").TextContent);

        page.Find("#finish-kind").Change("shellac");

        Assert.Equal("shellac", Far.Shop.Finish);
        Assert.Empty(page.FindAll("#finish .doubt"));
    }

    [Fact]
    public async Task Grits_are_written_one_a_line_and_the_way_follows()
    {
        var page = await ShowAsync();

        page.Find("#grits").Change("p 120\nP180\n220\nP120");

        Assert.Equal(["P120", "P180", "220"], Far.Shop.Abrasives.Grits);
        Assert.StartsWith("P120", page.Find(".grit-way strong").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("P120\nrough", "Line 2: found “rough”, expected a grit such as P120 or 120.")]
    [InlineData("", "Found nothing, expected at least one grit.")]
    public async Task What_is_no_grit_is_told_and_not_saved(string lines, string said)
    {
        var page = await ShowAsync();

        page.Find("#grits").Change(lines);

        Assert.Contains(said, page.Find("#grits-hint").TextContent);
        Assert.Equal(new Shop().Abrasives.Grits, Far.Shop.Abrasives.Grits);
    }

    // Largest step 1.3: P120 to P180 is a ratio of about 1.5 by [GritChart], so a grit between them is missing.
    [Fact]
    public async Task A_step_that_is_too_large_names_what_to_buy()
    {
        Far.Shop = new Shop { Abrasives = new Abrasives { Grits = ["P120", "P180", "P220"] } };
        var page = await ShowAsync();

        page.Find("#grit-step").Change("1.3");

        Assert.Equal(1.3, Far.Shop.Abrasives.LargestStep);
        Assert.Contains("To buy: P150", page.Find(".grit-way").TextContent);
    }

    private async Task<IRenderedComponent<ShopPage>> ShowAsync()
    {
        await Workshop.LoadAsync();
        return Render<ShopPage>();
    }
}
