using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Tests;

public sealed class PlannerTests
{
    [Fact]
    public async Task Four_squares_come_from_strips_of_two_woods_in_turn()
    {
        var plan = await Requests.PlanOf(Requests.FourSquares);

        Assert.Empty(PlanAudit.Check(plan));
        Assert.Equal("bench", Assert.Single(plan.Made).Gift);
        Assert.Equal(4, plan.Made[0].Parts.Length);
        var glueUp = Assert.Single(plan.GlueUps);
        var species = glueUp.Strips.Select(s => s.Offcut[0]).ToList();
        Assert.All(species.Zip(species.Skip(1)), pair => Assert.NotEqual(pair.First, pair.Second));
        Assert.True(glueUp.ChancePerMille >= 950);
        Assert.True(Requests.Level(plan, LevelKind.WoodUsed).IsProven);
    }

    [Fact]
    public async Task The_same_request_seed_and_limits_give_the_same_plan()
    {
        var one = await Requests.PlanOf(Requests.FourSquares);
        var other = await Requests.PlanOf(Requests.FourSquares);

        Assert.Equal(PlanJson.Write(one), PlanJson.Write(other));
    }

    [Fact]
    public async Task A_plan_written_and_read_back_is_the_same_plan_and_still_holds()
    {
        var plan = await Requests.PlanOf(Requests.FourSquares);

        var back = PlanJson.Read(PlanJson.Write(plan));

        Assert.Equal(PlanJson.Write(plan), PlanJson.Write(back));
        Assert.Empty(PlanAudit.Check(back));
    }

    [Fact]
    public async Task Without_enough_wood_the_more_important_gift_is_made_and_the_other_says_what_is_missing()
    {
        var request = Requests.FourSquares with
        {
            Gifts =
            [
                Requests.Squares("later") with { Priority = 3 },
                Requests.Squares("first") with { Priority = 1 },
            ],
            Pile = [.. Requests.FourSquares.Pile.Take(3)],
        };

        var plan = await Requests.PlanOf(request);

        Assert.Equal("first", Assert.Single(plan.Made).Gift);
        var unmade = Assert.Single(plan.Unmade);
        Assert.Equal("later", unmade.Gift);
        var missing = Assert.IsType<Reason.MissingStrips>(Assert.Single(unmade.Reasons));
        Assert.True(missing.Strips >= 1);
        Assert.True(missing.Length >= Length.FromInches(8));
    }

    [Fact]
    public async Task What_was_said_to_be_missing_is_enough_when_it_is_there()
    {
        var request = Requests.FourSquares with { Pile = [.. Requests.FourSquares.Pile.Take(2)] };
        var impossible = Assert.IsType<PlanOutcome.Impossible>(await Planner.PlanAsync(request, Requests.Quick));
        var missing = Assert.IsType<Reason.MissingStrips>(Assert.Single(Assert.Single(impossible.Unmade).Reasons));
        var species = missing.Tone == Tone.Light ? "sugar-maple" : missing.Tone == Tone.Dark ? "black-walnut" : "black-cherry";
        var bought = Enumerable.Range(1, missing.Strips)
            .Select(i => Requests.Offcut($"N{i}", species, missing.Length, missing.Width, missing.Thickness));

        var plan = await Requests.PlanOf(request with { Pile = [.. request.Pile, .. bought] });

        Assert.Single(plan.Made);
    }

    [Fact]
    public async Task An_empty_pile_makes_nothing_and_says_why() =>
        Assert.NotEmpty(Assert.Single(
            Assert.IsType<PlanOutcome.Impossible>(await Planner.PlanAsync(Requests.FourSquares with { Pile = [] }, Requests.Quick)).Unmade).Reasons);

    [Fact]
    public async Task No_gifts_are_no_plan()
    {
        var outcome = await Planner.PlanAsync(Requests.FourSquares with { Gifts = [] }, Requests.Quick);

        Assert.Empty(Assert.IsType<PlanOutcome.Impossible>(outcome).Unmade);
    }

    [Fact]
    public async Task An_option_that_does_not_fit_is_the_reason()
    {
        var request = Requests.FourSquares with { Gifts = [Requests.Squares("bench"), Requests.Squares("odd", ("size", "minus 3"))] };

        var plan = await Requests.PlanOf(request);

        Assert.Equal("size", Assert.IsType<Reason.WrongOption>(Assert.Single(plan.Unmade).Reasons[0]).Option);
    }

    [Fact]
    public async Task Defects_are_cut_round()
    {
        var request = Requests.FourSquares with
        {
            Pile =
            [
                .. Requests.FourSquares.Pile.Take(2),
                Requests.Offcut("K1", "black-walnut", 24 * 16, 26, 14) with
                {
                    Defects = [new Defect(DefectKind.Knot, Length.FromInches(2), Length.FromInches(3))],
                },
            ],
        };

        var plan = await Requests.PlanOf(request);

        Assert.Empty(PlanAudit.Check(plan));
        Assert.Contains(plan.GlueUps[0].Strips, s => s.Offcut == "K1");
        Assert.Contains(plan.Leftovers, l => l.Place == LeftoverPlace.ScrapBin && l.Piece.Lanes[0].Offcut == "K1");
    }

    [Fact]
    public async Task Sapwood_along_an_edge_is_ripped_off_and_the_rest_is_used()
    {
        var sapwood = new Defect(DefectKind.Sapwood, Length.Zero, Length.FromInches(18));
        Assert.IsType<PlanOutcome.Impossible>(await Planner.PlanAsync(WithWidest(sapwood), Requests.Quick));

        foreach (var from in new[] { Length.Zero, Length.FromInches(37, 16) })
        {
            var plan = await Requests.PlanOf(WithWidest(sapwood with { Across = new WidthStretch(from, from + Length.FromInches(3, 16)) }));

            Assert.Empty(PlanAudit.Check(plan));
            Assert.Single(plan.Made);
            var rip = Assert.Single(plan.Steps.SelectMany(s => s.Works.Select(w => (s.Operation, Work: w))), w => w.Work.In is ["K1"] && w.Operation is Operation.Rip);
            Assert.Contains(plan.GlueUps[0].Strips, s => s.Offcut == "K1" && s.Piece.StartsWith(from.IsZero ? "K1.2" : "K1.1", StringComparison.Ordinal));
            Assert.Equal(2, rip.Work.Out.Length);
        }
    }

    [Fact]
    public async Task A_knot_on_one_side_leaves_the_strip_on_the_other()
    {
        var plan = await Requests.PlanOf(WithWidest(new Defect(DefectKind.Knot, Length.FromInches(8), Length.FromInches(9)) { Across = new WidthStretch(Length.Zero, Length.FromInches(1)) }));

        Assert.Empty(PlanAudit.Check(plan));
        Assert.Single(plan.Made);
    }

    [Fact]
    public async Task A_knot_that_is_kept_is_no_defect()
    {
        var knot = new Defect(DefectKind.Knot, Length.FromInches(8), Length.FromInches(9));

        Assert.IsType<PlanOutcome.Impossible>(await Planner.PlanAsync(WithWidest(knot), Requests.Quick));
        var plan = await Requests.PlanOf(WithWidest(knot with { IsKept = true }));

        Assert.Single(plan.Made);
        Assert.Empty(PlanAudit.Check(plan));
        Assert.NotEmpty(PlanAudit.Check(plan with { Request = WithWidest(knot) }));
    }

    /// <summary>Wood for four squares that is just enough, when the widest offcut can be used with what is wrong with it.</summary>
    private static PlanRequest WithWidest(Defect defect) => Requests.FourSquares with
    {
        Pile =
        [
            .. Requests.FourSquares.Pile.Take(2),
            Requests.Offcut("K1", "black-walnut", 18 * 16, 40, 14) with { Defects = [defect] },
        ],
    };

    [Fact]
    public async Task Thick_stock_is_resawn_and_ordinary_stock_is_not()
    {
        var thick = await Requests.PlanOf(ThreeStrips(length: 11, sixteenths: 20));
        var thin = await Requests.PlanOf(ThreeStrips(length: 18, sixteenths: 14));

        // Too short for four blanks in a row: one panel of two layers, one load of clamps instead of two.
        Assert.Equal(2, thick.GlueUps[0].Layers);
        Assert.Contains(thick.Steps, s => s.Operation == Operation.Resaw);
        Assert.Equal(1, thin.GlueUps[0].Layers);
        Assert.DoesNotContain(thin.Steps, s => s.Operation is Operation.Resaw or Operation.ResawStrips);
    }

    [Fact]
    public async Task A_thick_offcut_is_resawn_before_gluing_when_two_strips_come_of_it()
    {
        var three = ThreeStrips(length: 18, sixteenths: 14);
        var request = three with { Pile = [three.Pile[0] with { Thickness = Length.FromInches(22, 16) }, three.Pile[1]] };

        var plan = await Requests.PlanOf(request);

        Assert.Single(plan.Made);
        Assert.Equal([2, 1, 2], plan.GlueUps[0].Strips.Select(s => s.Layers));
        Assert.Equal(2, plan.GlueUps[0].Strips.Count(s => s.Offcut == "W0"));
        Assert.Contains(plan.Steps, s => s.Operation == Operation.CleanSawnFaces);
        Assert.Empty(PlanAudit.Check(plan));
    }

    private static PlanRequest ThreeStrips(int length, int sixteenths) => Requests.FourSquares with
    {
        Pile = [.. "WMW".Select((c, i) => Requests.Offcut($"{c}{i}", c == 'W' ? "black-walnut" : "sugar-maple", length * 16, 28, sixteenths))],
    };

    [Fact]
    public async Task A_cupped_board_is_ripped_before_it_is_flattened_when_that_saves_it()
    {
        var wide = Requests.Offcut("W1", "black-walnut", 18 * 16, 64, 12) with { Cup = Length.FromInches(1, 8) };
        var maple = Requests.Offcut("M1", "sugar-maple", 18 * 16, 30, 12);
        var request = Requests.FourSquares with { Pile = [wide, maple] };

        var plan = await Requests.PlanOf(request);

        var step = Assert.Single(plan.Steps, s => s.Operation == Operation.RoughRip);
        Assert.Equal("W1", step.Works[0].In[0]);
        Assert.True(step.Number < plan.Steps.First(s => s.Operation == Operation.FaceJoint).Number);
    }

    [Fact]
    public async Task A_stand_with_rods_buys_the_rods_it_lacks()
    {
        var shop = new Shop { Rods = [] };
        var pile = Enumerable.Range(0, 5).Select(i => Requests.Offcut($"B{i}", i % 2 == 0 ? "american-beech" : "black-walnut", 14 * 16, 28, 14));
        var request = new PlanRequest { Shop = shop, Pile = [.. pile], Gifts = [new Gift { Label = "stand", Design = "rod-stand" }] };

        var plan = await Requests.PlanOf(request);

        Assert.Empty(PlanAudit.Check(plan));
        Assert.True(Assert.Single(plan.Rods).Bought);
        Assert.Contains(plan.Shopping, s => s.Size == Length.FromInches(3, 8) && s.Count == 1);
    }

    [Fact]
    public async Task A_u_stand_is_cut_in_order_along_one_board_a_side()
    {
        var pile = Enumerable.Range(0, 4).Select(i => Requests.Offcut($"C{i}", "black-cherry", 14 * 16, 19, 12));
        var request = new PlanRequest { Pile = [.. pile], Gifts = [new Gift { Label = "u", Design = "u-stand" }] };

        var plan = await Requests.PlanOf(request);

        Assert.Empty(PlanAudit.Check(plan));
        var cut = plan.Steps.Single(s => s.Operation == Operation.CrosscutBlanks).Works.First(w => w.Out.Any(p => p.Id == "u-A1"));
        Assert.Equal(["u-A1", "u-A2", "u-A3"], cut.Out.Take(3).Select(p => p.Id));
    }

    [Fact]
    public async Task Progress_tells_of_the_first_plan_and_of_every_level_that_is_done()
    {
        var reports = new List<PlanProgress>();

        await Planner.PlanAsync(Requests.FourSquares, Requests.Quick, new Listener(reports.Add));

        Assert.NotNull(reports[0].Best);
        Assert.Equal(5, reports.Count(r => r.Best is not null));
        Assert.All(reports, r => Assert.Equal(4, r.Levels.Length));
    }

    [Fact]
    public async Task A_search_that_is_cancelled_keeps_its_first_plan()
    {
        using var source = new CancellationTokenSource();
        var outcome = await Planner.PlanAsync(
            Requests.FourSquares, new PlanLimits { Seconds = 60 }, new Listener(_ => source.Cancel()), source.Token);

        Assert.Empty(PlanAudit.Check(Assert.IsType<PlanOutcome.Planned>(outcome).Plan));
    }

    [Fact]
    public async Task A_search_cancelled_before_there_is_a_plan_is_cancelled() =>
        Assert.IsType<PlanOutcome.Cancelled>(await Planner.PlanAsync(
            Requests.FourSquares with { Pile = [] }, Requests.Quick, null, new CancellationToken(canceled: true)));

    private sealed class Listener(Action<PlanProgress> hear) : IProgress<PlanProgress>
    {
        public void Report(PlanProgress value) => hear(value);
    }
}
