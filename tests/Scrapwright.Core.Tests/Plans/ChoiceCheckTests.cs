using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Core.Tests.Plans;

/// <summary>The audit of the maker's choices: each is broken on purpose.</summary>
public sealed class ChoiceCheckTests
{
    private static readonly Plan Plan = ExamplePlans.Squares;

    [Fact]
    public void Saved_wood_that_is_used_is_found() =>
        Assert.Contains(Check(new() { Saved = ["M1"] }), f => f.Where == "offcut M1" && f.Expected == "kept for later");

    [Fact]
    public void A_pin_that_is_kept_holds_and_one_that_is_not_is_found()
    {
        Assert.Empty(Check(new() { Pins = [new("M1", "Ida", "square")] }));
        Assert.Contains(Check(new() { Pins = [new("X9", "Ida", "square")] }), f => f.Where == "pin of X9 to Ida square");
    }

    [Fact]
    public void A_pin_of_a_gift_or_part_that_is_not_there_means_nothing() =>
        Assert.Empty(Check(new() { Pins = [new("M1", "Otto", "square"), new("M1", "Ida", "lid")] }));

    [Fact]
    public void An_order_that_is_not_kept_is_found()
    {
        var order = ChosenOrder.Of(Plan.GlueUps[0]);
        var turned = order with { Strips = [.. order.Strips.Reverse()] };

        Assert.Empty(Check(new() { Orders = [turned, order] }));
        Assert.Contains(Check(new() { Orders = [order, turned] }), f => f.Where == "glue-up G1 order of strips");
    }

    [Fact]
    public void An_order_in_which_alike_strips_would_touch_need_not_be_kept()
    {
        var order = ChosenOrder.Of(Plan.GlueUps[0]);

        Assert.Empty(Check(new() { Orders = [order with { Strips = [.. order.Strips.OrderBy(s => s.Offcut, StringComparer.Ordinal)] }] }));
    }

    [Fact]
    public void Glued_work_that_is_there_holds()
    {
        var choices = DoneMarks.Glue(Plan, "G1");

        Assert.Empty(Check(choices));
        Assert.Equal(["M1", "M2", "W1", "W2"], choices.Milled.Select(m => m.Offcut));
        Assert.Empty(ChoiceFaults.Of(Plan.Request with { Choices = choices }));
        Assert.True(DoneMarks.Unglue(choices, "G1").AreNone);
    }

    [Fact]
    public void A_milled_strip_that_is_there_holds_and_one_in_another_place_is_found()
    {
        var choices = DoneMarks.Mill(Plan, new(), "M1");

        Assert.Empty(Check(choices));
        Assert.Equal("M1", Assert.Single(choices.Milled).Offcut);
        Assert.Empty(ChoiceFaults.Of(Plan.Request with { Choices = choices }));
        Assert.True(DoneMarks.Unmill(choices, "M1").AreNone);
        Assert.Throws<ArgumentException>(() => DoneMarks.Mill(Plan, new(), "X9"));

        var longer = choices.MilledStrips[0] with { Strip = choices.MilledStrips[0].Strip with { RoughWidth = Length.FromInches(1) } };
        Assert.Contains(Check(choices with { MilledStrips = [longer] }), f => f.Where.StartsWith("milled strip M1", StringComparison.Ordinal));
        Assert.Contains(Check(choices with { MilledStrips = [choices.MilledStrips[0] with { Part = "lid" }] }), f => f.Where == "milled strip M1 strip M1 of M1" && f.Expected == "left alone");
    }

    [Fact]
    public void A_strip_cut_from_a_milled_one_bears_its_name_with_a_letter_behind()
    {
        var strip = Plan.GlueUps[0].Strips[0];
        var milled = new MilledStrip("Ida", "square", strip);

        Assert.True(milled.Is(strip));
        Assert.True(milled.Is(strip with { Piece = strip.Piece + "b", Length = Length.FromInches(1) }));
        Assert.False(milled.Is(strip with { Piece = strip.Piece + "/1" }));
        Assert.False(milled.Is(strip with { Length = strip.Length + Length.FromPicometres(1) }));
    }

    [Fact]
    public void Glued_work_that_is_missing_is_found()
    {
        var choices = DoneMarks.Glue(Plan, "G1");

        Assert.Contains(Check(choices with { Glued = [choices.Glued[0] with { Id = "G7" }] }), f => f.Where == "glued G7" && f.Found == "not there");
    }

    [Fact]
    public void Glued_work_in_another_order_is_found()
    {
        var choices = DoneMarks.Glue(Plan, "G1");

        Assert.Contains(Check(choices with { Glued = [choices.Glued[0] with { Strips = [.. choices.Glued[0].Strips.Reverse()] }] }), f => f.Where == "glued G1 strips");
    }

    [Fact]
    public void Work_that_does_not_fit_the_pile_is_told_and_its_wood_may_not_be_used()
    {
        var choices = DoneMarks.Glue(Plan, "G1");
        var strip = choices.Glued[0].Strips[0];
        var wrong = choices with { Glued = [choices.Glued[0] with { Strips = choices.Glued[0].Strips.SetItem(0, strip with { Thickness = strip.Thickness + Length.FromPicometres(1) }) }] };

        Assert.StartsWith("G1: W1 has another size", Assert.Single(ChoiceFaults.Of(Plan.Request with { Choices = wrong })).Found, StringComparison.Ordinal);
        Assert.Contains(Check(wrong), f => f.Found == "used for something else");
    }

    [Fact]
    public void A_broken_form_is_found_and_ends_the_audit()
    {
        Assert.Single(Check(new() { Saved = default }));
        Assert.Single(Check(new() { Orders = [new("Ida", "square", default)] }));
        Assert.Single(Check(new() { Cut = [new("Ida", "A", "x", "W1", Length.FromMillimetres(-1), default, default, default)] }));
        Assert.Single(PlanAudit.Check(Plan with { Before = [new("Ida", "square", "W1", default, 0)] }));
    }

    [Fact]
    public void The_level_of_strips_as_before_is_worked_out_again()
    {
        var before = FormerStrips.Of(Plan);
        Plan With(long value) => Plan with { Before = before, Levels = Plan.Levels.Add(new Level { Kind = LevelKind.StripsAsBefore, Value = value, Bound = 9 }) };

        Assert.Empty(PlanAudit.Check(With(4)));
        Assert.Contains(PlanAudit.Check(With(3)), f => f.Where == "level StripsAsBefore value" && f.Expected == "4");
        Assert.Contains(PlanAudit.Check(Plan with { Before = before }), f => f.Where == "levels");
        Assert.Equal(4, FormerStrips.CountKept(before, Plan.GlueUps, Plan.Boards));
    }

    private static ImmutableArray<AuditFinding> Check(MakerChoices choices)
    {
        var request = Plan.Request with { Choices = choices };
        var isWhole = !choices.Saved.IsDefault && choices.Orders.All(o => !o.Strips.IsDefault);
        return PlanAudit.Check(Plan with { Request = request, Fingerprint = isWhole ? PlanJson.Fingerprint(request) : "" });
    }
}
