using Bunit;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Scrapwright.Client.Choices;
using Scrapwright.Client.Plans;
using Scrapwright.Client.Shell;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Tests.Plans;

namespace Scrapwright.Client.Tests.Choices;

public sealed class StripMoverTests : ScreenContext
{
    // Lower edge first: W1, M1, W2, M2.
    private static readonly Plan Plan = ExamplePlans.Squares;
    private readonly List<string> said = [];
    private int closed;

    public StripMoverTests() => Services.GetRequiredService<Announcer>().Said += said.Add;

    [Fact]
    public async Task An_arrow_key_moves_the_strip_says_its_place_and_the_audit_says_what_is_wrong()
    {
        var mover = Show();

        await mover.FindAll(".mover-strip")[0].KeyDownAsync(new KeyboardEventArgs { Key = "ArrowDown" });

        Assert.Equal(["W2", "M2", "M1", "W1"], Pieces(mover));
        Assert.Equal("M2 is now place 2 of 4 from the upper edge, between W2 and M1.", said[^1]);
        mover.WaitForAssertion(() => Assert.Contains("M1 and M2 look too alike side by side: ΔE 0.0, at least", mover.Find("[role=status]").TextContent));
        Assert.True(mover.Find(".button.next").HasAttribute("disabled"));
        Assert.Contains("ΔE 0.0, was ΔE", mover.Find(".order-figures").TextContent);
    }

    [Fact]
    public async Task Home_and_End_move_it_to_the_edges_and_at_the_edge_it_stays()
    {
        var mover = Show();

        await mover.FindAll(".mover-strip")[0].KeyDownAsync(new KeyboardEventArgs { Key = "End" });
        Assert.Equal(["W2", "M1", "W1", "M2"], Pieces(mover));
        await mover.FindAll(".mover-strip")[3].KeyDownAsync(new KeyboardEventArgs { Key = "ArrowDown" });
        Assert.Equal(["W2", "M1", "W1", "M2"], Pieces(mover));
        await mover.FindAll(".mover-strip")[3].KeyDownAsync(new KeyboardEventArgs { Key = "Home" });

        Assert.Equal(["M2", "W2", "M1", "W1"], Pieces(mover));
        Assert.True(mover.Find(".button.next").HasAttribute("disabled"));
    }

    [Fact]
    public async Task Escape_puts_all_back_and_once_more_closes()
    {
        var mover = Show();
        await mover.FindAll(".mover-strip")[1].KeyDownAsync(new KeyboardEventArgs { Key = "ArrowUp" });

        await mover.FindAll(".mover-strip")[0].KeyDownAsync(new KeyboardEventArgs { Key = "Escape" });
        Assert.Equal(["M2", "W2", "M1", "W1"], Pieces(mover));
        Assert.Equal((0, "The strips lie as in the plan."), (closed, said[^1]));
        await mover.FindAll(".mover-strip")[0].KeyDownAsync(new KeyboardEventArgs { Key = "Escape" });

        Assert.Equal(1, closed);
    }

    [Fact]
    public async Task A_chosen_strip_is_moved_by_buttons()
    {
        var mover = Show();
        Assert.True(Button(mover, "Down").HasAttribute("disabled"));

        await mover.FindAll(".mover-strip")[0].ClickAsync(new());
        Assert.True(Button(mover, "Up").HasAttribute("disabled"));
        await Button(mover, "Down").ClickAsync(new());
        await Button(mover, "Down").ClickAsync(new());

        Assert.Equal(["W2", "M1", "M2", "W1"], Pieces(mover));
        Assert.Equal("true", mover.FindAll(".mover-strip")[2].GetAttribute("aria-pressed"));
    }

    [Fact]
    public async Task While_a_strip_is_dragged_the_numbers_follow_and_let_go_elsewhere_it_is_back()
    {
        var mover = Show();

        await mover.InvokeAsync(() => mover.Instance.StripOver(0, 1));
        Assert.Equal(["M2", "W2", "M1", "W1"], Pieces(mover));
        Assert.Contains("ΔE 0.0, was ΔE", mover.Find(".order-figures").TextContent);
        await mover.InvokeAsync(() => mover.Instance.StripDropped(1, stays: false));
        Assert.DoesNotContain("was", mover.Find(".order-figures").TextContent);

        await mover.InvokeAsync(() => mover.Instance.StripOver(0, 1));
        await mover.InvokeAsync(() => mover.Instance.StripOver(0, 3));
        await mover.InvokeAsync(() => mover.Instance.StripDropped(3, stays: true));
        Assert.Equal(["W2", "M1", "W1", "M2"], Pieces(mover));
        Assert.Equal("M2 is now place 4 of 4 from the upper edge, below W1.", said[^1]);
    }

    [Fact]
    public async Task Turned_round_the_audit_agrees_and_the_order_is_kept_and_undone()
    {
        await Run.ShowAsync(Plan);
        var mover = Show();

        await Button(mover, "Turn round").ClickAsync(new());
        mover.WaitForAssertion(() => Assert.Contains("The audit agrees.", mover.Find("[role=status]").TextContent));
        await mover.Find(".button.next").ClickAsync(new());

        Assert.Equal(["M2", "W2", "M1", "W1"], Far.Orders.Single().Strips);
        Assert.Equal(["M2", "W2", "M1", "W1"], Run.Plan!.GlueUps[0].Strips.Select(s => s.Piece));
        Assert.Empty(PlanAudit.Check(Run.Plan));

        await Services.GetRequiredService<Undoing>().UndoLatestAsync();
        Assert.Equal(["W1", "M1", "W2", "M2"], Far.Orders[^1].Strips);
        Assert.Equal(["W1", "M1", "W2", "M2"], Run.Plan.GlueUps[0].Strips.Select(s => s.Piece));
    }

    [Fact]
    public async Task Without_the_server_the_order_is_not_kept_and_stays_to_try_again()
    {
        var mover = Show();
        await Button(mover, "Turn round").ClickAsync(new());
        mover.WaitForAssertion(() => Assert.False(mover.Find(".button.next").HasAttribute("disabled")));
        Far.IsCutOff = true;

        await mover.Find(".button.next").ClickAsync(new());

        Assert.Contains("does not answer", mover.Find("[role=alert]").TextContent);
        Assert.Equal(["W1", "M1", "W2", "M2"], Pieces(mover));
        Assert.False(mover.Find(".button.next").HasAttribute("disabled"));
    }

    private PlanRun Run => Services.GetRequiredService<PlanRun>();

    private static string[] Pieces(IRenderedComponent<StripMover> mover) => [.. mover.FindAll(".mover-strip .wood-label").Select(label => label.TextContent)];

    private static AngleSharp.Dom.IElement Button(IRenderedComponent<StripMover> mover, string word) => mover.FindAll(".choices button").Single(b => b.TextContent.EndsWith(word, StringComparison.Ordinal));

    private IRenderedComponent<StripMover> Show() => Render<StripMover>(parameters => parameters
        .Add(m => m.Reader, new PlanReader(Plan)).Add(m => m.GlueUp, Plan.GlueUps[0]).Add(m => m.Closed, () => closed++));
}
