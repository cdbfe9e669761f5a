using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Scrapwright.Client.Choices;
using Scrapwright.Client.Shell;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Client.Tests.Choices;

public sealed class SaveForLaterTests : ScreenContext
{
    private static readonly Offcut Two = new()
    {
        Label = "W",
        Species = "black-walnut",
        Length = Length.FromInches(12),
        Width = Length.FromInches(2),
        Thickness = Length.FromInches(1),
        Count = 2,
    };

    [Fact]
    public async Task An_entry_is_kept_whole_and_undo_leaves_what_was_kept_of_it_before()
    {
        Far.Choices = new() { Saved = ["Wb"] };
        await Services.GetRequiredService<KeptChoices>().LoadAsync();
        var save = Render<SaveForLater>(p => p.Add(s => s.Offcut, Two));
        Assert.Contains("1 of 2", save.Find("button").TextContent);

        await save.Find("button").ClickAsync(new());
        Assert.Equal(["W"], Far.Choices.Saved);
        Assert.Equal("true", save.Find("button").GetAttribute("aria-pressed"));

        await Services.GetRequiredService<Undoing>().UndoLatestAsync();
        Assert.Equal(["Wb"], Far.Choices.Saved);
    }

    [Fact]
    public async Task Pressed_again_all_its_pieces_may_be_used()
    {
        Far.Choices = new() { Saved = ["Wa", "X", "Wb"] };
        await Services.GetRequiredService<KeptChoices>().LoadAsync();
        var save = Render<SaveForLater>(p => p.Add(s => s.Offcut, Two));
        Assert.Equal("true", save.Find("button").GetAttribute("aria-pressed"));

        await save.Find("button").ClickAsync(new());

        Assert.Equal(["X"], Far.Choices.Saved);
    }

    [Fact]
    public async Task Without_the_server_it_says_so_and_nothing_is_pressed()
    {
        await Services.GetRequiredService<KeptChoices>().LoadAsync();
        var save = Render<SaveForLater>(p => p.Add(s => s.Offcut, Two));
        Far.IsCutOff = true;

        await save.Find("button").ClickAsync(new());

        Assert.Contains("does not answer", save.Find("[role=alert]").TextContent);
        Assert.Equal("false", save.Find("button").GetAttribute("aria-pressed"));
    }
}
