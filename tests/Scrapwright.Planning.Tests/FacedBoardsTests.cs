using System.Collections.Immutable;
using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Plans.Ideas;
using Scrapwright.Core.Plans.Why;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Tests;

/// <summary>Two thin offcuts glued face to face into one board.</summary>
public sealed class FacedBoardsTests
{
    /// <summary>Maple as it should be, walnut only in thin pieces: six, of which three boards can be made.</summary>
    internal static PlanRequest ThinWalnut => Requests.FourSquares with
    {
        Pile =
        [
            .. Requests.FourSquares.Pile.Where(o => o.Species == "sugar-maple"),
            .. Enumerable.Range(1, 6).Select(i => Requests.Offcut($"T{i}", "black-walnut", 18 * 16, 26, 8)),
        ],
    };

    [Fact]
    public async Task A_gift_that_only_thin_wood_could_give_is_made_from_boards_glued_face_to_face()
    {
        var plan = await Requests.PlanOf(ThinWalnut);

        Assert.Empty(PlanAudit.Check(plan));
        Assert.Equal("bench", Assert.Single(plan.Made).Gift);
        Assert.NotEmpty(plan.Faced);
        Assert.All(plan.Faced, b => Assert.Contains(plan.GlueUps.SelectMany(g => g.Strips), s => s.Offcut == b.Label));
        Assert.All(plan.Faced, b => Assert.Equal(Length.FromInches(15, 16), b.Thickness));
        Assert.Equal(plan.GlueUps.Length + plan.Faced.Length, Requests.Level(plan, LevelKind.ClampLoads).Value);
        var facing = plan.Steps.Take(1 + plan.Faced.Length).ToList();
        Assert.Equal([Operation.FaceJoint, .. plan.Faced.Select(_ => Operation.FaceGlue)], facing.Select(s => s.Operation));
        Assert.All(facing.Skip(1), s => Assert.Equal((Station.Clamps, 60), (s.Station, s.WaitMinutes)));
    }

    [Fact]
    public async Task Without_a_partner_of_the_same_wood_it_is_not()
    {
        var pile = ThinWalnut.Pile.Where(o => o.Species == "sugar-maple").Concat([ThinWalnut.Pile[3], ThinWalnut.Pile[4] with { Species = "black-cherry" }]);

        Assert.IsType<PlanOutcome.Impossible>(await Planner.PlanAsync(ThinWalnut with { Pile = [.. pile] }, Requests.Quick));
    }

    [Fact]
    public async Task An_offcut_kept_for_later_takes_its_pair_away()
    {
        var pile = ThinWalnut.Pile.RemoveRange(5, 4);
        var request = ThinWalnut with { Pile = [.. pile, Requests.Offcut("W9", "black-walnut", 18 * 16, 26, 14)], Gifts = [Requests.Squares("bench", ("count", "2"))] };
        var free = await Requests.PlanOf(request with { Pile = pile, Gifts = request.Gifts });

        var kept = await Planner.PlanAsync(request with { Pile = pile, Choices = new() { Saved = ["T1"] } }, Requests.Quick);

        Assert.Equal("T1+T2", Assert.Single(free.Faced).Label);
        Assert.IsType<PlanOutcome.Impossible>(kept);
    }

    [Fact]
    public async Task Thin_wood_that_serves_a_part_alone_is_never_glued()
    {
        // Thin panels take it as it is.
        var plan = await Requests.PlanOf(ThinWalnut with { Gifts = [Requests.Squares("bench", ("thickness", "1/4 in"))] });

        Assert.Empty(plan.Faced);
        Assert.Contains(plan.GlueUps.SelectMany(g => g.Strips), s => s.Offcut.StartsWith('T'));
    }

    [Fact]
    public async Task Boards_nobody_needs_are_not_glued_and_their_offcuts_go_back_whole()
    {
        var request = ThinWalnut with { Pile = [.. Requests.FourSquares.Pile, .. ThinWalnut.Pile.Where(o => o.Label.StartsWith('T')).Select(o => o with { Length = Length.FromInches(4) })] };

        var plan = await Requests.PlanOf(request);

        Assert.Empty(plan.Faced);
        Assert.All(request.Pile.Where(o => o.Label.StartsWith('T')), o => Assert.Contains(plan.Leftovers, l => l.Piece.Id == o.Label && l.Piece.Thickness == o.Thickness));
    }

    [Fact]
    public async Task Planning_again_keeps_boards_with_their_labels_and_strips()
    {
        var former = await Requests.PlanOf(ThinWalnut);

        var again = Assert.IsType<PlanOutcome.Planned>(await Planner.PlanAsync(former.Request, Requests.Quick, former)).Plan;

        Assert.Equal(former.Faced, again.Faced);
        Assert.Empty(PlanChanges.Between(former, again));
        Assert.Equal(former.GlueUps.Sum(g => (long)g.Strips.Length), Requests.Level(again, LevelKind.StripsAsBefore).Value);
    }

    [Fact]
    public async Task What_is_glued_from_a_board_stays_when_the_rest_is_planned_anew()
    {
        var former = await Requests.PlanOf(ThinWalnut with { Gifts = [Requests.Squares("bench"), Requests.Squares("shelf", ("count", "2"))], Pile = [.. ThinWalnut.Pile, .. ThinWalnut.Pile.Select(o => o with { Label = o.Label + "x" })] });
        var glueUp = former.GlueUps.First(g => g.Strips.Any(s => former.Faced.Any(f => f.Label == s.Offcut)));
        var choices = DoneMarks.Glue(former, glueUp.Id);

        var again = await Requests.PlanOf(former.Request with { Choices = choices });

        Assert.Empty(ChoiceFaults.Of(again.Request));
        Assert.Empty(PlanAudit.Check(again));
        Assert.Contains(again.GlueUps, choices.Glued[0].Is);
        Assert.Subset(again.Faced.Select(f => f.Label).ToHashSet(), former.Faced.Select(f => f.Label).Where(l => glueUp.Strips.Any(s => s.Offcut == l)).ToHashSet());
    }

    [Fact]
    public async Task A_strip_of_a_board_that_is_milled_stays_in_its_part()
    {
        var former = await Requests.PlanOf(ThinWalnut);
        var strip = former.GlueUps.SelectMany(g => g.Strips).First(s => former.Faced.Any(f => f.Label == s.Offcut));
        var choices = DoneMarks.Mill(former, former.Request.Choices, strip.Piece);

        var again = await Requests.PlanOf(former.Request with { Choices = choices });

        Assert.Empty(ChoiceFaults.Of(again.Request));
        Assert.Empty(PlanAudit.Check(again));
        Assert.Contains(again.GlueUps.SelectMany(g => g.Strips), choices.MilledStrips[0].Is);
    }

    [Fact]
    public async Task An_order_the_maker_set_holds_for_strips_of_boards()
    {
        var free = await Requests.PlanOf(ThinWalnut);
        var glueUp = free.GlueUps.First(g => g.Strips.Any(s => free.Faced.Any(f => f.Label == s.Offcut)));

        var turned = PlanOrder.With(free, glueUp.Id, [.. Enumerable.Range(0, glueUp.Strips.Length).Reverse()]);

        Assert.Empty(PlanAudit.Check(turned));
        Assert.Empty(ChoiceFaults.Of(turned.Request));
    }

    [Fact]
    public async Task A_board_is_asked_about_like_an_offcut()
    {
        var plan = await Requests.PlanOf(ThinWalnut);
        var glueUp = plan.GlueUps.First(g => g.Strips.Any(s => plan.Faced.Any(f => f.Label == s.Offcut)));

        var answer = await Explainer.AnswerAsync(
            plan, new(WhyKind.ThisOffcut, "bench", glueUp.Part, plan.Faced[0].Label), Requests.Quick, TestContext.Current.CancellationToken);

        // Another pair does as well.
        Assert.True(answer.CanBeOtherwise);
    }

    [Fact]
    public async Task An_offcut_too_thin_for_anything_is_told_what_it_may_be_glued_to()
    {
        var request = ThinWalnut with { Gifts = [], Pile = [.. ThinWalnut.Pile.Select(o => o.Label.StartsWith('T') ? o with { Thickness = Length.FromInches(5, 16) } : o), Requests.Offcut("Z", "white-oak", 18 * 16, 26, 5)] };

        var thin = await AskAsync("T1");
        var alone = await AskAsync("Z");

        Assert.NotEmpty(thin.Boards);
        Assert.All(thin.Boards, b => Assert.StartsWith("T1+", b));
        Assert.Contains("Glued face to face it would serve: T1+T2", IdeaWords.Nothing(thin, request.Shop));
        Assert.Empty(alone.Boards);
        Assert.Contains("No other thin offcut of its wood makes up for it", IdeaWords.Nothing(alone, request.Shop));

        Task<IdeasAnswer> AskAsync(string offcut) => IdeaMaker.AnswerAsync(
            request, null, new(IdeasKind.Offcut, offcut, Seconds: 20), Requests.Quick, null, TestContext.Current.CancellationToken);
    }

    [Fact]
    public async Task Of_work_on_a_board_that_no_longer_fits_both_offcuts_are_left_alone()
    {
        var former = await Requests.PlanOf(ThinWalnut);
        var board = former.Faced[0];
        var glueUp = former.GlueUps.First(g => g.Strips.Any(s => s.Offcut == board.Label));
        var request = former.Request with
        {
            Choices = DoneMarks.Glue(former, glueUp.Id),
            Pile = [.. former.Request.Pile.Select(o => o.Label == board.Lower ? o with { Thickness = o.Thickness - Length.FromInches(1, 16) } : o)],
        };

        var work = DoneWork.Of(request);

        Assert.NotEmpty(work.Faults);
        Assert.Contains(board.Upper, work.LeftAlone);
        Assert.Contains(board.Lower, work.LeftAlone);
        var outcome = await Planner.PlanAsync(request, Requests.Quick);
        Assert.DoesNotContain((outcome as PlanOutcome.Planned)?.Plan.Faced ?? [], f => f.IsOf(board.Upper) || f.IsOf(board.Lower));
    }

    [Fact]
    public void Whatever_the_thin_wood_the_plan_passes_the_audit_and_no_offcut_is_used_twice()
    {
        var boards = 0;
        Gen.Select(Gen.Int[0, 1], Gen.Int[150, 330], Gen.Int[20, 40], Gen.Int[6, 15], Gen.Int[0, 5]).Array[6, 9].Sample(
            sizes =>
            {
                var request = new PlanRequest
                {
                    Pile = [.. sizes.Select((s, i) => Requests.Offcut($"P{i}", s.Item1 == 0 ? "black-walnut" : "sugar-maple", s.Item2, s.Item3, s.Item4) with
                    {
                        Faces = s.Item5 == 0 ? Faces.BothSurfaced : s.Item5 == 1 ? Faces.OneSurfaced : Faces.Rough,
                        Cup = s.Item5 == 2 ? Length.FromInches(1, 32) : Length.Zero,
                        Defects = s.Item5 == 3 ? [new Defect(DefectKind.Knot, Length.FromInches(2), Length.FromInches(3)) { Across = new(Length.Zero, Length.FromInches(1, 2)) }] : [],
                    })],
                    Gifts = [Requests.Squares("one", ("count", "2")), Requests.Squares("two", ("count", "3"))],
                };

                if (Planner.PlanAsync(request, Requests.Quick with { Seconds = 3 }).Result is not PlanOutcome.Planned planned)
                {
                    return;
                }

                boards += planned.Plan.Faced.Length;
                Assert.Empty(PlanAudit.Check(planned.Plan));
                var halves = planned.Plan.Faced.SelectMany(f => (string[])[f.Upper, f.Lower]).ToList();
                Assert.Equal(halves.Count, halves.Distinct().Count());
                Assert.DoesNotContain(planned.Plan.GlueUps.SelectMany(g => g.Strips), s => halves.Contains(s.Offcut));
                Assert.Equal(planned.Plan.Faced, PlanJson.Read(PlanJson.Write(planned.Plan)).Faced);
            },
            iter: 20, threads: 1);

        Assert.NotEqual(0, boards);
    }
}
