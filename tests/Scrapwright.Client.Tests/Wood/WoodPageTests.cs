using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Scrapwright.Client.Numbers;
using Scrapwright.Client.Wood;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Client.Tests.Wood;

public sealed class WoodPageTests : ScreenContext
{
    [Fact]
    public void Without_a_wood_every_wood_can_be_chosen()
    {
        var page = Show(null);

        Assert.Equal(SpeciesTable.All.Length, page.FindAll(".wood-links a").Count);
    }

    // [WoodHandbook] Table 13-5 and eq. 13-2: 4 · 0.00274 · 6 = 0.066 in, to the nearest 1/64 that is 1/16; Table 5-3b: 1010 lbf.
    [Fact]
    public void A_wood_in_the_address_is_shown_with_its_numbers()
    {
        var page = Show("black-walnut");

        Assert.Equal("Walnut", page.Find("h1").TextContent);
        var figures = page.FindAll(".wood-figures div");
        Assert.Equal(["Moves, flat-sawn", "Moves, quarter-sawn", "Hardness", "Density"], figures.Select(f => f.QuerySelector("dt")!.TextContent));
        Assert.Contains("1/16 inch", figures[0].TextContent);
        Assert.Contains("0.066 in", figures[0].TextContent);
        Assert.Contains("1010", figures[2].TextContent);
        Assert.Contains("estimate", page.Find(".wood-swatches + p").TextContent);
        Assert.Contains("ToxicWoods1990", page.Find(".cautions").TextContent);
        Assert.Contains("Great Britain, HSE", page.Find(".limits").TextContent);
    }

    [Fact]
    public void Two_woods_in_the_address_are_compared_in_the_shops_unit()
    {
        var page = Render<CascadingValue<Ruler>>(parameters => parameters
            .Add(c => c.Value, new Ruler(LengthUnit.Millimetre, 32))
            .AddChildContent<WoodPage>(child => child.Add(p => p.First, "black-walnut").Add(p => p.Second, "sugar-maple")));

        // 100 · 0.00274 · 6 = 1.644 and 100 · 0.00353 · 6 = 2.118 mm.
        Assert.Equal(["1.6", "2.1", "+0.5 mm"], page.Find(".compare tbody tr").QuerySelectorAll("td").Select(c => c.TextContent.Trim()));
        Assert.Contains("strong contrast, much lighter", page.Find(".contrasts").TextContent);
        Assert.All(page.FindAll(".contrasts tbody tr"), row => Assert.Equal("told apart", row.LastElementChild!.TextContent));
    }

    [Fact]
    public void A_wood_that_nobody_knows_is_told_with_the_nearest()
    {
        var page = Show("wallnut");

        Assert.Contains("Found “wallnut”, expected the name of a wood. Maybe:", page.Find(".notice").TextContent);
        Assert.Equal("wood/black-walnut", page.Find(".notice a").GetAttribute("href"));
    }

    [Fact]
    public void A_wood_is_found_by_typing_and_the_arrow_keys()
    {
        var page = Show(null);

        page.Find("#find-wood").Input("map");
        Assert.Equal("true", page.Find("#find-wood").GetAttribute("aria-expanded"));
        var names = page.FindAll("[role=option] span:not(.swatch)").Select(o => o.TextContent).ToList();
        page.Find("#find-wood").KeyDown("ArrowDown");
        Assert.Equal(page.FindAll("[role=option]")[1].Id, page.Find("#find-wood").GetAttribute("aria-activedescendant"));
        page.Find("#find-wood").KeyDown("Enter");

        Assert.All(names, name => Assert.Contains("maple", name));
        var chosen = SpeciesTable.All.Single(s => s.Name == names[1]);
        Assert.EndsWith($"/wood/{chosen.Key}", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
    }

    [Fact]
    public void A_second_wood_is_put_beside_the_first()
    {
        var page = Show("black-walnut");

        page.Find("#find-beside").Input("hard maple");
        page.Find("[role=option]").Click();

        Assert.EndsWith("/wood/black-walnut/sugar-maple", Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
    }

    [Fact]
    public void What_names_no_wood_is_said_at_the_field()
    {
        var page = Show(null);

        page.Find("#find-wood").Input("qqqq");
        page.Find("#find-wood").KeyDown("Enter");

        Assert.Contains("Found “qqqq”, expected the name of a wood.", page.Find("#find-wood-hint").TextContent);
    }

    [Fact]
    public void Every_wood_has_a_page()
    {
        foreach (var species in SpeciesTable.All)
        {
            var page = Show(species.Key);

            Assert.Equal(4, page.FindAll(".wood-figures div").Count);
            Assert.Equal(3, page.FindAll(".wood-swatches li").Count);
            Assert.NotEmpty(page.FindAll(".care li"));
            Assert.DoesNotContain("@", page.Markup);
        }
    }

    private IRenderedComponent<WoodPage> Show(string? first, string? second = null) =>
        Render<WoodPage>(parameters => parameters.Add(p => p.First, first).Add(p => p.Second, second));
}
