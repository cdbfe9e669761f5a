using Bunit;
using Scrapwright.Client.Fits;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Client.Tests.Fits;

public sealed class FitToolTests : ScreenContext
{
    [Fact]
    public void A_tight_opening_jams_and_a_wide_one_is_good()
    {
        var tool = Render<FitTool>();

        tool.Find("#opening-size").Change("4 in");
        Assert.StartsWith("Jams in ", Verdict(tool), StringComparison.Ordinal);

        tool.Find("#opening-size").Change("4 3/32 in");
        Assert.StartsWith("Good all year: ", Verdict(tool), StringComparison.Ordinal);

        tool.Find("#most-clearance").Change("0");
        tool.Find("#opening-size").Change("5 in");
        Assert.StartsWith("Good all year: ", Verdict(tool), StringComparison.Ordinal);
        Assert.DoesNotContain("Never rattles", tool.Markup);
    }

    [Fact]
    public void The_smallest_opening_it_names_does_not_jam()
    {
        var tool = Render<FitTool>();
        tool.Find("#opening-size").Change("4 in");

        var smallest = tool.Find(".fit-openings .size").GetAttribute("title")!;
        tool.Find("#opening-size").Change(smallest);

        Assert.StartsWith("Good all year: ", Verdict(tool), StringComparison.Ordinal);
    }

    // Fitted where it is driest, everything swells later: the table's tightest month is the dampest.
    [Fact]
    public void The_table_has_twelve_months_and_marks_those_that_are_wrong()
    {
        var tool = Render<FitTool>();
        tool.Find("#opening-size").Change("4 in");

        var rows = tool.FindAll(".fit-months tbody tr");
        Assert.Equal(12, rows.Count);
        Assert.Contains(rows, row => row.ClassName == "wrong" && row.TextContent.Contains("not good"));
        Assert.Contains("<title>What you try</title>", tool.Markup);
    }

    [Fact]
    public void Wood_of_the_page_is_taken_and_another_choice_is_kept()
    {
        var tool = Render<FitTool>(parameters => parameters.Add(t => t.HeldWood, "sugar-maple").Add(t => t.OpeningWood, "black-walnut"));
        Assert.Equal(("sugar-maple", "black-walnut"), (tool.Find("#held-wood").GetAttribute("value"), tool.Find("#opening-wood").GetAttribute("value")));

        tool.Find("#held-wood").Change("white-oak");
        tool.Render(parameters => parameters.Add(t => t.HeldWood, "sugar-maple"));

        Assert.Equal("white-oak", tool.Find("#held-wood").GetAttribute("value"));
    }

    [Fact]
    public void Clearances_that_contradict_each_other_are_told()
    {
        var tool = Render<FitTool>();

        tool.Find("#least-clearance").Change("1/4");

        Assert.Contains("Least clearance is above the most.", tool.Find(".fit-answer").TextContent);
    }

    [Fact]
    public async Task What_nobody_filled_in_follows_a_shop_that_is_known_later()
    {
        Far.Shop = new Shop { Unit = LengthUnit.Millimetre, Climate = "shed-cold" };
        var tool = Render<FitTool>();
        tool.Find("#lives-in").Change("tropical");

        await Workshop.LoadAsync();

        Assert.Equal(("shed-cold", "tropical"), (tool.Find("#fitted-in").GetAttribute("value"), tool.Find("#lives-in").GetAttribute("value")));
        Assert.Contains(" mm", tool.Find(".fit-verdict").TextContent);
    }

    private static string Verdict(IRenderedComponent<FitTool> tool) => tool.Find(".fit-verdict").TextContent.TrimStart('✓', '!', ' ');
}
