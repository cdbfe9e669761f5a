using System.Collections.Immutable;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Scrapwright.Client.Api;
using Scrapwright.Client.Choices;
using Scrapwright.Client.Plans;
using Scrapwright.Client.Shell;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Tests.Fits;
using Scrapwright.Core.Tests.Plans;

namespace Scrapwright.Client.Tests.Choices;

public sealed class GlueUpChoicesTests : ScreenContext
{
    private static readonly Plan Plan = ExamplePlans.Squares;

    private KeptChoices Kept => Services.GetRequiredService<KeptChoices>();

    [Fact]
    public async Task A_glue_up_is_marked_as_glued_with_how_its_wood_was_milled_and_the_mark_comes_off()
    {
        await Services.GetRequiredService<PlanRun>().ShowAsync(Plan);
        var choices = Show(Plan);
        var mark = choices.Find(".done-mark");

        await mark.ClickAsync(new());

        Assert.Equal("true", choices.Find(".done-mark").GetAttribute("aria-pressed"));
        Assert.True(Assert.Single(Far.Choices.Glued).Is(Plan.GlueUps[0]));
        Assert.Equal(["M1", "M2", "W1", "W2"], Far.Choices.Milled.Select(m => m.Offcut));
        var stamped = Services.GetRequiredService<PlanRun>().Plan!;
        Assert.Equal("G1", Assert.Single(stamped.Request.Choices.Glued).Id);
        Assert.Empty(PlanAudit.Check(stamped));

        await choices.Find(".done-mark").ClickAsync(new());
        Assert.True(Far.Choices.AreNone);
    }

    [Fact]
    public async Task A_mark_does_not_lose_what_another_screen_decided_meanwhile()
    {
        await Kept.LoadAsync();
        var choices = Show(Plan);
        Far.Choices = new() { Saved = ["X"] };

        await choices.Find(".done-mark").ClickAsync(new());

        Assert.Equal(["X"], Far.Choices.Saved);
        Assert.Single(Far.Choices.Glued);
    }

    [Fact]
    public async Task A_strip_is_pinned_and_let_go()
    {
        var strip = Show(Plan).FindComponents<StripChoice>()[0];
        Assert.Equal("M2", strip.Find(".wood-label").TextContent);

        await Button(strip, "Pin here").ClickAsync(new());
        Assert.Equal(new Pin("M2", "Ida", "square"), Assert.Single(Far.Choices.Pins));
        Assert.Equal("true", Button(strip, "Pin here").GetAttribute("aria-pressed"));
        Assert.Contains("A strip of M2 stays in", strip.Find("[role=status]").TextContent);

        await Button(strip, "Pin here").ClickAsync(new());
        Assert.Empty(Far.Choices.Pins);
    }

    [Fact]
    public async Task A_strip_is_marked_as_milled_and_the_mark_comes_off()
    {
        var strip = Show(Plan).FindComponents<StripChoice>()[0];

        await Button(strip, "M2 is milled").ClickAsync(new());
        Assert.Equal("M2", Assert.Single(Far.Choices.MilledStrips).Strip.Piece);
        Assert.Equal("M2", Assert.Single(Far.Choices.Milled).Offcut);
        Assert.Contains("M2 stays cut as it is", strip.Find("[role=status]").TextContent);

        await Button(strip, "M2 is milled").ClickAsync(new());
        Assert.True(Far.Choices.AreNone);
    }

    [Fact]
    public async Task Wood_kept_for_later_is_no_longer_pinned_and_undo_pins_it_again()
    {
        Far.Choices = new() { Pins = [new Pin("M2", "Ida", "square")] };
        await Kept.LoadAsync();
        var strip = Show(Plan).FindComponents<StripChoice>()[0];

        await Button(strip, "Keep for later").ClickAsync(new());
        Assert.Equal(["M2"], Far.Choices.Saved);
        Assert.Empty(Far.Choices.Pins);

        await Services.GetRequiredService<Undoing>().UndoLatestAsync();
        Assert.Empty(Far.Choices.Saved);
        Assert.Single(Far.Choices.Pins);
    }

    [Fact]
    public async Task A_strip_is_moved_to_another_glue_up_by_choosing_it()
    {
        var plan = Two();
        Far.Choices = new() { Pins = [new Pin("W", "Tiles", "square")], Saved = ["W"] };
        await Kept.LoadAsync();
        var strip = Show(plan).FindComponents<StripChoice>().Single(s => s.Instance.Offcut == "W");

        Assert.Equal(["G2, square for Mats"], strip.FindAll("option").Select(o => o.TextContent));
        await Button(strip, "Move").ClickAsync(new());

        Assert.Equal(new Pin("W", "Mats", "square"), Assert.Single(Far.Choices.Pins));
        Assert.Empty(Far.Choices.Saved);
        Assert.Equal("W goes to square for Mats when you plan again.", strip.Find("[role=status]").TextContent);
        Assert.Contains("Pinned to square for Mats.", strip.Markup);

        await Button(strip, "Let go").ClickAsync(new());
        Assert.Empty(Far.Choices.Pins);
    }

    [Fact]
    public async Task Every_choice_can_be_taken_back_also_one_that_means_nothing_any_more()
    {
        Far.Choices = new() { Saved = ["W1", "gone"], Pins = [new Pin("W1", "nobody", "square")] };
        Far.Offcuts.Add(new OffcutRow(1, Plan.Request.Pile[0], Core.Measures.LengthUnit.Inch));
        await Workshop.LoadAsync();
        await Kept.LoadAsync();

        var list = Render<ChoiceList>();
        Assert.Contains("Your choices (3)", list.Find("summary").TextContent);
        Assert.DoesNotContain("no longer", list.FindAll("li")[0].TextContent);
        Assert.Contains("no longer there", list.FindAll("li")[1].TextContent);
        Assert.Contains("no longer there", list.FindAll("li")[2].TextContent);

        await list.FindAll("li")[2].QuerySelector("button")!.ClickAsync(new());
        await list.FindAll("li")[1].QuerySelector("button")!.ClickAsync(new());
        Assert.Equal(["W1"], Far.Choices.Saved);
        Assert.Empty(Far.Choices.Pins);
    }

    [Fact]
    public void Changes_are_told_as_sentences_and_none_too()
    {
        var some = Render<ChangeList>(p => p.Add(c => c.Changes, [new PlanChange(ChangeKind.Strip, "strip of C7 goes to G2 instead of G1")]));
        Assert.Equal("Strip of C7 goes to G2 instead of G1.", some.Find("li").TextContent);

        Assert.Contains("Nothing has changed", Render<ChangeList>(p => p.Add(c => c.Changes, [])).Markup);
    }

    private static Plan Two()
    {
        var plan = new StandPlan();
        plan.Gifts.Add(new Gift { Label = "Tiles", Design = "striped-squares" });
        plan.Gifts.Add(new Gift { Label = "Mats", Design = "striped-squares" });
        return plan.Offcut("W", "black-walnut").Offcut("M", "sugar-maple").Make("Tiles", ("square", "M W M")).Make("Mats", ("square", "W M W")).Build();
    }

    private static AngleSharp.Dom.IElement Button(IRenderedComponent<StripChoice> strip, string word) =>
        strip.FindAll("button").First(b => b.TextContent.TrimStart('✓').StartsWith(word, StringComparison.Ordinal));

    private IRenderedComponent<GlueUpChoices> Show(Plan plan) => Render<GlueUpChoices>(parameters => parameters
        .Add(c => c.Reader, new PlanReader(plan)).Add(c => c.GlueUp, plan.GlueUps[0]));
}
