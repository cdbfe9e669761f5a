using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Scrapwright.Client.Choices;
using Scrapwright.Client.Plans;
using Scrapwright.Client.Shell;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Tests.Plans;

namespace Scrapwright.Client.Tests.Plans;

public sealed class FacedListTests : ScreenContext
{
    private static readonly Plan Plan = ExamplePlans.Faced;

    [Fact]
    public void The_plan_page_says_what_is_glued_to_what_and_how()
    {
        var list = Render<FacedList>(p => p.Add(l => l.Reader, new PlanReader(Plan)));

        Assert.Equal(["T1", "T2", "T1+T2"], list.FindAll(".wood-label").Select(l => l.TextContent));
        Assert.Contains("walnut, gives", list.Markup);
        Assert.Equal(["Glue", "Clamps"], list.FindAll("dt").Select(t => t.TextContent));
    }

    [Fact]
    public void A_plan_without_boards_says_nothing_of_them() =>
        Assert.Equal("", Render<FacedList>(p => p.Add(l => l.Reader, new PlanReader(ExamplePlans.Squares))).Markup.Trim());

    [Fact]
    public async Task Of_a_strip_of_a_board_both_offcuts_are_kept_for_later_and_it_cannot_be_pinned()
    {
        await Services.GetRequiredService<PlanRun>().ShowAsync(Plan);
        var strip = Render<StripChoice>(p => p.Add(s => s.Reader, new PlanReader(Plan)).Add(s => s.GlueUp, Plan.GlueUps[0]).Add(s => s.Offcut, "T1+T2"));
        Assert.DoesNotContain("Pin here", strip.Markup);
        Assert.Empty(strip.FindAll("select"));

        await strip.FindAll("button").Single(b => b.TextContent.Contains("Keep both for later")).ClickAsync(new());

        Assert.Equal(["T1", "T2"], Far.Choices.Saved.Order());
    }

    [Fact]
    public void A_rest_of_a_board_is_a_leftover_and_its_offcuts_are_not_untouched()
    {
        var list = Render<LeftoverList>(p => p.Add(l => l.Reader, new PlanReader(Plan)));

        Assert.Contains("0 offcuts are not touched", list.Markup);
    }
}
