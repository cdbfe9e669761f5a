using System.Collections.Immutable;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Scrapwright.Client.Api;
using Scrapwright.Client.Plans;
using Scrapwright.Client.Shell;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Tests.Fits;

namespace Scrapwright.Client.Tests.Plans;

public sealed class FitListTests : ScreenContext
{
    [Fact]
    public async Task What_does_not_hold_comes_first_with_what_to_do_and_its_year()
    {
        var list = await ShowAsync(Stand("clearance=1/64 in; most-clearance=0 in"));

        var card = list.Find(".fit");
        Assert.Matches("(Jams|Too tight) in ", card.QuerySelector(".fit-verdict")!.TextContent);
        Assert.Contains("Set clearance to ", card.TextContent);
        Assert.Contains("bad", card.ClassList);
        Assert.True(card.HasAttribute("open"));
        Assert.Equal(12, card.QuerySelectorAll(".fit-months tbody tr").Length);
    }

    [Fact]
    public async Task A_fit_that_holds_is_said_in_one_line_and_folded()
    {
        var list = await ShowAsync(Stand("clearance=3/16 in; most-clearance=0 in"));

        Assert.Contains("Good all year: ", list.Find(".fit.good .fit-verdict").TextContent);
        Assert.False(list.Find(".fit").HasAttribute("open"));
        Assert.Empty(list.FindAll(".fit-months"));
        Assert.Empty(list.FindAll(".fit .button"));
    }

    [Fact]
    public async Task The_button_sets_the_clearance_of_that_gift_and_it_can_be_undone()
    {
        var plan = Stand("clearance=1/64 in; most-clearance=0 in");
        var list = await ShowAsync(plan);
        var set = new PlanReader(plan).Fits.First().Season.Setting!;

        list.Find(".fit .button").Click();

        Assert.Equal(set.Value.ToExactText(plan.Request.Shop.Unit), Far.Gifts.Single(g => g.Gift.Label == "Stand").Gift.Options["clearance"]);
        Assert.Contains("Plan again to use it.", list.Find(".fit [role=status]").TextContent);

        await Services.GetRequiredService<Undoing>().UndoLatestAsync();
        Assert.Equal("1/64 in", Far.Gifts.Single(g => g.Gift.Label == "Stand").Gift.Options["clearance"]);
        Assert.Single(list.FindAll(".fit .button"));
    }

    [Fact]
    public void A_glue_up_says_how_it_moves_how_it_is_glued_and_whether_it_is_told_apart()
    {
        var plan = Stand("clearance=3/16 in");
        var tiles = plan.GlueUps.First(g => g.Gift == "Tiles");

        var facts = Render<GlueUpAdviceFacts>(parameters => parameters.Add(f => f.GlueUp, tiles).Add(f => f.Reader, new PlanReader(plan)));

        Assert.Equal(["Glue", "Press", "Caul", "Clamps", "Moves"], facts.FindAll("dt").Take(5).Select(t => t.TextContent));
        // Walnut and maple stand 40 apart in lightness by their table values; two walnuts beside each other not at all.
        Assert.Equal("not told apart: G1.2 and G1.3", facts.FindAll("dd")[^1].TextContent);
    }

    [Fact]
    public void The_woods_of_a_plan_come_with_their_cautions()
    {
        var woods = Render<WoodCautions>(parameters => parameters.Add(w => w.Woods, new PlanReader(Stand("clearance=3/16 in")).Woods));

        Assert.Equal(["wood/sugar-maple", "wood/paper-birch", "wood/black-walnut"], woods.FindAll("a").Select(a => a.GetAttribute("href")));
        Assert.Contains("ToxicWoods1990", woods.Markup);
    }

    private async Task<IRenderedComponent<FitList>> ShowAsync(Plan plan)
    {
        Far.Gifts.AddRange(plan.Request.Gifts.Select((gift, i) => new GiftRow(i + 1, gift)));
        await Workshop.LoadAsync();
        return Render<FitList>(parameters => parameters.Add(l => l.Reader, new PlanReader(plan)));
    }

    private static Plan Stand(string options)
    {
        var of = options.Split("; ").Select(o => o.Split('=')).ToImmutableSortedDictionary(o => o[0], o => o[1]);
        var plan = new StandPlan();
        plan.Gifts.Add(new Gift { Label = "Tiles", Design = "striped-squares" });
        plan.Gifts.Add(new Gift { Label = "Stand", Design = "rod-stand", Options = of.Add("holds", "Tiles") });
        return plan.Offcut("W", "black-walnut").Offcut("M", "sugar-maple").Make("Tiles", ("square", "M W W M")).Make("Stand", ("plate", "W M W")).Build();
    }
}
