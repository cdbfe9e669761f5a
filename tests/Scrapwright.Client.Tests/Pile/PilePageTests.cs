using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Scrapwright.Client.Pile;
using Scrapwright.Client.Shell;

namespace Scrapwright.Client.Tests.Pile;

public sealed class PilePageTests : ScreenContext
{
    [Fact]
    public async Task An_entered_line_is_sent_and_stands_in_the_list()
    {
        await Workshop.LoadAsync();
        var page = Render<PilePage>();

        page.Find("#entry").Input("cherry 19 1/2 x 2 3/4 x 7/8");
        page.Find("form.entry").Submit();

        Assert.Equal("black-cherry", Assert.Single(Far.Offcuts).Offcut.Species);
        Assert.Contains("cherry", page.Find(".pile-list").TextContent);
        Assert.True(string.IsNullOrEmpty(page.Find("#entry").GetAttribute("value")));
    }

    [Fact]
    public async Task Without_a_server_the_line_stays_in_the_field()
    {
        await Workshop.LoadAsync();
        var page = Render<PilePage>();
        page.Find("#entry").Input("cherry 19 1/2 x 2 3/4 x 7/8");
        Far.IsCutOff = true;

        page.Find("form.entry").Submit();

        Assert.Contains("does not answer", page.Find("[role=alert]").TextContent);
        Assert.Equal("cherry 19 1/2 x 2 3/4 x 7/8", page.Find("#entry").GetAttribute("value"));
        Assert.False(Services.GetRequiredService<Server>().IsReachable);
    }

    [Fact]
    public async Task Find_shows_only_what_matches_every_word()
    {
        await Workshop.LoadAsync();
        var page = Render<PilePage>();
        foreach (var line in new[] { "cherry 19 x 2 x 7/8", "walnut 19 x 2 x 7/8 cupped 1/16", "walnut 12 x 2 x 7/8" })
        {
            page.Find("#entry").Input(line);
            page.Find("form.entry").Submit();
        }

        page.Find("#find").Input("walnut cup");

        Assert.Single(page.FindAll(".pile-list > li"));
    }
}
