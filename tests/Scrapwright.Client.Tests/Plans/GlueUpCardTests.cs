using Bunit;
using Scrapwright.Client.Plans;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Tests.Fits;

namespace Scrapwright.Client.Tests.Plans;

public sealed class GlueUpCardTests : ScreenContext
{
    [Fact]
    public void Sisters_bear_one_letter_have_one_figure_and_one_is_to_be_turned_over()
    {
        var plan = new StandPlan();
        plan.Gifts.Add(new Gift { Label = "Tiles", Design = "striped-squares" });
        var built = plan.Offcut("W", "black-walnut").Offcut("M", "sugar-maple").Make("Tiles", ("square", "W M W")).Build();
        var strips = built.GlueUps[0].Strips;
        var glueUp = built.GlueUps[0] with { Strips = [strips[0] with { Sister = strips[2].Piece }, strips[1], strips[2] with { Sister = strips[0].Piece, TurnedOver = true }] };

        var card = Render<GlueUpCard>(p => p.Add(c => c.Reader, new PlanReader(built)).Add(c => c.GlueUp, glueUp));

        Assert.Equal(
            ["walnut, sister A, turn over", "hard maple", "walnut, sister A"],
            card.FindAll(".strips tbody tr").Select(row => row.QuerySelectorAll("td")[0].TextContent.Trim()));
        Assert.Contains($"A {strips[0].Piece} + {strips[2].Piece}. Turn over the second.", card.Find(".book").TextContent);
        Assert.Equal([null, null, true], card.FindAll(".wood-picture path").Select(path => path.HasAttribute("transform") ? true : (bool?)null));
    }

    [Fact]
    public void Without_sisters_nothing_is_said_of_books()
    {
        var plan = new StandPlan();
        plan.Gifts.Add(new Gift { Label = "Tiles", Design = "striped-squares" });
        var built = plan.Offcut("W", "black-walnut").Offcut("M", "sugar-maple").Make("Tiles", ("square", "W M W")).Build();

        var card = Render<GlueUpCard>(p => p.Add(c => c.Reader, new PlanReader(built)).Add(c => c.GlueUp, built.GlueUps[0]));

        Assert.Empty(card.FindAll(".book"));
        Assert.DoesNotContain("sister", card.Markup);
    }
}
