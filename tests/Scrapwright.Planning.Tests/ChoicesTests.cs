using System.Collections.Immutable;
using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Planning.Tests;

public sealed class ChoicesTests
{
    [Fact]
    public async Task Wood_kept_for_later_stays_whole()
    {
        var free = await Requests.PlanOf(Requests.FourSquares);
        var saved = free.GlueUps[0].Strips[0].Offcut;

        var plan = await Requests.PlanOf(With(Requests.FourSquares, new() { Saved = [saved] }));

        Assert.Empty(PlanAudit.Check(plan));
        Assert.DoesNotContain(saved, Offcuts(plan));
        Assert.Contains(plan.Leftovers, l => l.Piece.Id == saved && l.Place == LeftoverPlace.Pile);
    }

    [Fact]
    public async Task An_entry_kept_for_later_keeps_all_its_pieces()
    {
        var request = Requests.FourSquares with
        {
            Pile = [Requests.Offcut("W", "black-walnut", 18 * 16, 26, 14) with { Count = 3 }, .. Requests.FourSquares.Pile],
            Choices = new() { Saved = ["W"] },
        };

        var plan = await Requests.PlanOf(request);

        Assert.DoesNotContain(Offcuts(plan), o => o is "Wa" or "Wb" or "Wc");
    }

    [Fact]
    public async Task When_too_much_is_kept_for_later_the_gift_says_what_is_missing()
    {
        var request = With(Requests.FourSquares, new() { Saved = ["W1", "W2", "W3"] });

        var outcome = Assert.IsType<PlanOutcome.Impossible>(await Planner.PlanAsync(request, Requests.Quick));

        Assert.IsType<Reason.MissingStrips>(Assert.Single(Assert.Single(outcome.Unmade).Reasons));
    }

    [Theory]
    [InlineData("W3")]
    [InlineData("M3")]
    [InlineData("W1")]
    [InlineData("M2")]
    public async Task A_pin_is_kept(string offcut)
    {
        var plan = await Requests.PlanOf(With(Requests.FourSquares, new() { Pins = [new(offcut, "bench", "square")] }));

        Assert.Empty(PlanAudit.Check(plan));
        Assert.Contains(offcut, plan.GlueUps.SelectMany(g => g.Strips).Select(s => s.Offcut));
    }

    [Theory]
    [InlineData("Z9", PinFault.NotInPile)]
    [InlineData("W1", PinFault.KeptForLater)]
    [InlineData("S1", PinFault.TooShort)]
    [InlineData("S2", PinFault.TooThin)]
    [InlineData("S3", PinFault.TooNarrow)]
    public async Task A_pin_that_cannot_be_kept_is_refused_with_its_reason(string offcut, PinFault fault)
    {
        var request = Requests.FourSquares with
        {
            Pile =
            [
                .. Requests.FourSquares.Pile, Requests.Offcut("S1", "black-walnut", 3 * 16, 26, 14), Requests.Offcut("S2", "black-walnut", 18 * 16, 26, 5),
                Requests.Offcut("S3", "black-walnut", 18 * 16, 5, 14),
            ],
            Choices = new() { Saved = ["W1"], Pins = [new(offcut, "bench", "square")] },
        };

        var outcome = Assert.IsType<PlanOutcome.Impossible>(await Planner.PlanAsync(request, Requests.Quick));

        var reason = Assert.IsType<Reason.Pinned>(Assert.Single(Assert.Single(outcome.Unmade).Reasons));
        Assert.Equal((fault, offcut, "square"), (reason.Fault, reason.Offcut, reason.Part));
    }

    [Fact]
    public async Task Pins_that_cannot_be_kept_together_are_refused_and_the_other_gift_is_made()
    {
        // The pinned offcut gives one strip.
        var request = Requests.FourSquares with
        {
            Gifts = [Requests.Squares("one"), Requests.Squares("two")],
            Pile = [.. Requests.FourSquares.Pile.Concat(Requests.FourSquares.Pile.Select(o => o with { Label = o.Label + "x" })).Append(Requests.Offcut("P", "black-walnut", 12 * 16, 12, 14))],
            Choices = new() { Pins = [new("P", "one", "square"), new("P", "two", "square")] },
        };

        var plan = await Requests.PlanOf(request);

        Assert.Empty(PlanAudit.Check(plan));
        Assert.Single(plan.Made);
        Assert.Equal(PinFault.NoWayFound, Assert.IsType<Reason.Pinned>(Assert.Single(Assert.Single(plan.Unmade).Reasons)).Fault);
    }

    [Fact]
    public async Task An_order_the_maker_set_is_kept_when_neighbours_may_lie_so_and_else_left_out()
    {
        var free = await Requests.PlanOf(Requests.FourSquares);
        var glueUp = Assert.Single(free.GlueUps);
        var turned = ChosenOrder.Of(glueUp with { Strips = [.. glueUp.Strips.Reverse()] });
        var alike = ChosenOrder.Of(glueUp with { Strips = [.. glueUp.Strips.OrderBy(s => s.Offcut)] });

        var kept = await Requests.PlanOf(With(free.Request, new() { Orders = [turned] }));
        var refused = await Requests.PlanOf(With(free.Request, new() { Orders = [alike] }));

        Assert.Equal(turned.Strips, kept.GlueUps[0].Strips.Select(ChosenStrip.Of));
        Assert.Empty(PlanAudit.Check(kept));
        Assert.NotEqual(alike.Strips, refused.GlueUps[0].Strips.Select(ChosenStrip.Of));
        Assert.Empty(PlanAudit.Check(refused));
    }

    [Fact]
    public async Task What_is_glued_and_cut_stays_to_the_picometre_when_the_rest_is_planned_anew()
    {
        var former = await Requests.PlanOf(Requests.TwoGifts);
        var choices = DoneMarks.Glue(former, former.GlueUps[0].Id);
        choices = DoneMarks.Glue(former with { Request = With(former.Request, choices) }, former.GlueUps[^1].Id);
        choices = DoneMarks.Cut(former with { Request = With(former.Request, choices) }, former.Boards[0].Piece);

        // The rest changes: an offcut of an open glue-up is gone, and another is kept for later.
        var used = former.GlueUps.Skip(1).SkipLast(1).SelectMany(g => g.Strips).Select(s => s.Offcut).Distinct().Where(o => choices.Milled.All(m => m.Offcut != o)).ToList();
        var request = With(former.Request, choices with { Saved = [.. used.Take(2)] });
        var plan = await Requests.PlanOf(request);
        var near = Assert.IsType<PlanOutcome.Planned>(await Planner.PlanAsync(request, Requests.Quick, former)).Plan;

        foreach (var again in new[] { plan, near })
        {
            Assert.Empty(PlanAudit.Check(again));
            foreach (var done in choices.Glued) Assert.Contains(again.GlueUps, done.Is);
            Assert.Contains(former.Boards[0], again.Boards);
            Assert.DoesNotContain(Offcuts(again), used.Take(2).Contains);
        }
    }

    [Fact]
    public async Task Marking_all_as_done_and_planning_again_gives_the_same_glue_ups_and_boards()
    {
        var former = await Requests.PlanOf(Requests.TwoGifts);
        var all = former;
        foreach (var glueUp in former.GlueUps) all = all with { Request = With(all.Request, DoneMarks.Glue(all, glueUp.Id)) };
        foreach (var board in former.Boards) all = all with { Request = With(all.Request, DoneMarks.Cut(all, board.Piece)) };

        var plan = await Requests.PlanOf(all.Request);

        Assert.Empty(PlanAudit.Check(plan));
        Assert.Equal(former.GlueUps.Select(g => g.Id).Order(), plan.GlueUps.Select(g => g.Id).Order());
        Assert.All(former.GlueUps, g => Assert.True(DoneGlueUp.Of(g).Is(plan.GlueUps.Single(p => p.Id == g.Id))));
        Assert.Equal(former.Boards.OrderBy(b => b.Piece), plan.Boards.OrderBy(b => b.Piece));
        Assert.Equal(Requests.Level(former, LevelKind.GiftsMade).Value, Requests.Level(plan, LevelKind.GiftsMade).Value);
        Assert.Equal(Requests.Level(former, LevelKind.Looks).Value, Requests.Level(plan, LevelKind.Looks).Value);
        Assert.Equal(Requests.Level(former, LevelKind.WoodUsed).Value, Requests.Level(plan, LevelKind.WoodUsed).Value);
    }

    [Fact]
    public async Task Work_that_no_longer_fits_is_left_out_and_its_wood_left_alone()
    {
        var former = await Requests.PlanOf(Requests.FourSquares);
        var choices = DoneMarks.Glue(former, "G1");
        var offcut = former.GlueUps[0].Strips[0].Offcut;
        var more = Requests.FourSquares.Pile.Select(o => o with { Label = o.Label + "x" });
        var request = former.Request with
        {
            Pile = [.. former.Request.Pile.Select(o => o.Label == offcut ? o with { Width = o.Width + Length.FromInches(1, 8) } : o), .. more],
            Choices = choices,
        };

        var plan = await Requests.PlanOf(request);

        Assert.Contains(offcut, Assert.Single(DoneWork.Of(request).Faults).Found);
        Assert.Empty(PlanAudit.Check(plan));
        Assert.DoesNotContain(Offcuts(plan), former.GlueUps[0].Strips.Select(s => s.Offcut).Contains);
    }

    [Fact]
    public async Task What_is_done_stays_when_the_rest_of_its_gift_finds_no_wood_any_more()
    {
        var former = await Requests.PlanOf(Requests.TwoGifts);
        var all = former;
        foreach (var glueUp in former.GlueUps.Where(g => g.Gift == "bench")) all = all with { Request = With(all.Request, DoneMarks.Glue(all, glueUp.Id)) };
        var board = former.Boards.First(b => b.Gift == "stand");
        all = all with { Request = With(all.Request, DoneMarks.Cut(all, board.Piece)) };
        var choices = all.Request.Choices with { Saved = [.. former.Request.Pile.Select(o => o.Label)] };

        var plan = Assert.IsType<PlanOutcome.Planned>(await Planner.PlanAsync(With(former.Request, choices), Requests.Quick, former)).Plan;

        Assert.Equal("bench", Assert.Single(plan.Made).Gift);
        Assert.Equal("stand", Assert.Single(plan.Unmade).Gift);
        Assert.Contains(board, plan.Boards);
        Assert.Empty(PlanAudit.Check(plan));
    }

    [Fact]
    public void Saved_wood_pins_and_done_work_hold_on_any_small_pile() => SmallPiles.Gen.Sample(
        request =>
        {
            if (Planner.PlanAsync(request, Quick).Result is not PlanOutcome.Planned { Plan: var former }) return;
            var glueUp = former.GlueUps[0];
            var spare = former.Request.Pile.Select(o => o.Label).FirstOrDefault(l => glueUp.Strips.All(s => s.Offcut != l)) ?? "";
            var choices = DoneMarks.Glue(former, glueUp.Id) with { Saved = spare.Length == 0 ? [] : [spare] };

            if (Planner.PlanAsync(With(request, choices), Quick, former).Result is not PlanOutcome.Planned { Plan: var again }) return;

            Assert.Contains(again.GlueUps, choices.Glued[0].Is);
            Assert.DoesNotContain(spare, Offcuts(again));
            Assert.Empty(PlanAudit.Check(again));
        },
        iter: 12, threads: 1);

    [Fact]
    public async Task A_strip_that_is_milled_stays_in_its_part_when_the_rest_is_planned_anew()
    {
        var former = await Requests.PlanOf(Requests.TwoGifts);
        var strips = former.GlueUps.Select(g => g.Strips[0]).ToList();
        var choices = strips.Aggregate(new MakerChoices(), (all, strip) => DoneMarks.Mill(former, all, strip.Piece));
        var free = former.GlueUps.SelectMany(g => g.Strips).Select(s => s.Offcut).Except(choices.Milled.Select(m => m.Offcut)).First();

        var plan = await Requests.PlanOf(With(former.Request, choices with { Saved = [free] }));

        Assert.Empty(PlanAudit.Check(plan));
        foreach (var (strip, glueUp) in strips.Zip(former.GlueUps).Where(pair => plan.Made.Any(m => m.Gift == pair.Second.Gift)))
            Assert.Contains(plan.GlueUps.Where(g => g.IsFor(glueUp.Gift, glueUp.Part)).SelectMany(g => g.Strips), new MilledStrip("", "", strip).Is);
        Assert.NotEmpty(plan.Made);
    }

    [Fact]
    public async Task A_milled_strip_that_has_another_size_now_is_left_alone()
    {
        var former = await Requests.PlanOf(Requests.FourSquares);
        var strip = former.GlueUps[0].Strips[0];
        var request = former.Request with
        {
            Pile = [.. former.Request.Pile.Select(o => o.Label == strip.Offcut ? o with { Width = o.Width + Length.FromInches(1, 8) } : o), .. Requests.FourSquares.Pile.Select(o => o with { Label = o.Label + "x" })],
            Choices = DoneMarks.Mill(former, new(), strip.Piece),
        };

        var plan = await Requests.PlanOf(request);

        Assert.Equal("milledStrips[0]", Assert.Single(DoneWork.Of(request).Faults).Path);
        Assert.Empty(PlanAudit.Check(plan));
        Assert.DoesNotContain(strip.Offcut, Offcuts(plan));
    }

    [Fact]
    public void Milled_strips_hold_on_any_small_pile() => SmallPiles.Gen.Sample(
        request =>
        {
            if (Planner.PlanAsync(request, Quick).Result is not PlanOutcome.Planned { Plan: var former }) return;
            var glueUp = former.GlueUps[0];
            var choices = glueUp.Strips.Aggregate(new MakerChoices(), (all, strip) => DoneMarks.Mill(former, all, strip.Piece));

            if (Planner.PlanAsync(With(request, choices), Quick).Result is not PlanOutcome.Planned { Plan: var again }) return;

            Assert.Empty(PlanAudit.Check(again));
            if (again.Made.Any(m => m.Gift == glueUp.Gift))
                Assert.All(choices.MilledStrips, milled => Assert.Contains(again.GlueUps.Where(g => g.IsFor(glueUp.Gift)).SelectMany(g => g.Strips), milled.Is));
        },
        iter: 12, threads: 1);

    private static readonly PlanLimits Quick = new() { Seconds = 1, Deterministic = true };

    private static PlanRequest With(PlanRequest request, MakerChoices choices) => request with { Choices = choices };

    private static List<string> Offcuts(Plan plan) => [.. plan.GlueUps.SelectMany(g => g.Strips).Select(s => s.Offcut).Concat(plan.Boards.Select(b => b.Offcut))];
}
