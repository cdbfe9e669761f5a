using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Scrapwright.Client.Gifts;
using Scrapwright.Client.Shell;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Client.Tests.Shell;

public sealed class UndoingTests : ScreenContext
{
    private Undoing Undoing => Services.GetRequiredService<Undoing>();

    [Fact]
    public async Task The_latest_comes_back_first()
    {
        var back = new List<string>();
        Undoing.Remember(Undo("first", back));
        Undoing.Remember(Undo("second", back));

        await Undoing.UndoLatestAsync();
        await Undoing.UndoLatestAsync();

        Assert.Equal(["second", "first"], back);
        Assert.Null(Undoing.Latest);
    }

    [Fact]
    public async Task What_cannot_come_back_stays_and_says_why()
    {
        Undoing.Remember(new Undo("Offcut W3", () => Task.FromResult("Another offcut has that label.")));

        var sentence = await Undoing.UndoLatestAsync();

        Assert.Equal("Another offcut has that label.", sentence);
        Assert.NotNull(Undoing.Latest);
    }

    [Fact]
    public void The_bar_names_the_thing_and_undoes_it()
    {
        var back = new List<string>();
        var bar = Render<UndoBar>();
        Undoing.Remember(Undo("Offcut W3", back));
        bar.WaitForElement(".undo-bar");
        Assert.Contains("Offcut W3 deleted", bar.Find(".undo-bar").TextContent);

        bar.Find("button.undo").Click();

        Assert.Equal(["Offcut W3"], back);
        Assert.Empty(bar.FindAll(".undo-bar"));
    }

    [Fact]
    public async Task A_deleted_gift_comes_back_from_the_server()
    {
        Far.Gifts.Add(new(7, new Gift { Label = "Ada", Design = "striped-squares", Recipient = "Ada" }));
        await Workshop.LoadAsync();
        var page = Render<GiftsPage>();
        page.FindAll("button").Single(b => b.TextContent.StartsWith("Delete", StringComparison.Ordinal)).Click();
        Assert.Empty(Far.Gifts);
        Assert.Empty(page.FindAll(".gift-card"));

        await Undoing.UndoLatestAsync();

        Assert.Equal("Ada", Assert.Single(Far.Gifts).Gift.Label);
        page.WaitForElement(".gift-card");
    }

    private static Undo Undo(string thing, List<string> back) => new(thing, () =>
    {
        back.Add(thing);
        return Task.FromResult("");
    });
}
