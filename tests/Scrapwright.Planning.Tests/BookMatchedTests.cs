using System.Collections.Immutable;
using CsCheck;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Tests;

/// <summary>Panels of sisters: layers of one thick stick, opened like a book.</summary>
public sealed class BookMatchedTests
{
    private static readonly Gift Squares = Requests.Squares("bench", ("pattern", "book-matched"), ("strips", "4"));

    [Fact]
    public async Task Thick_stock_is_opened_like_a_book()
    {
        var plan = await Requests.PlanOf(Request(thickness: 26, Squares));

        Assert.Empty(PlanAudit.Check(plan));
        Assert.Equal(new Level { Kind = LevelKind.Looks, Value = 1, Bound = 1 }, Requests.Level(plan, LevelKind.Looks));
        AssertIsBookMatched(plan, Assert.Single(plan.GlueUps));
    }

    [Fact]
    public async Task Thin_stock_is_glued_without_the_point()
    {
        var plan = await Requests.PlanOf(Request(thickness: 14, Squares));

        Assert.Empty(PlanAudit.Check(plan));
        Assert.Equal(0, Requests.Level(plan, LevelKind.Looks).Value);
        Assert.All(plan.GlueUps.SelectMany(g => g.Strips), s => Assert.Equal(("", false), (s.Sister, s.TurnedOver)));
    }

    [Fact]
    public async Task Two_wide_sisters_of_one_wood_make_a_panel_that_no_other_pattern_allows()
    {
        ImmutableArray<Offcut> pile = [Requests.Offcut("W1", "black-walnut", 18 * 16, 44, 26)];

        var plan = await Requests.PlanOf(new PlanRequest { Pile = pile, Gifts = [Requests.Squares("bench", ("pattern", "book-matched"), ("strips", "2"))] });
        var mirrored = await Planner.PlanAsync(new PlanRequest { Pile = pile, Gifts = [Requests.Squares("bench", ("pattern", "mirrored"), ("strips", "2"))] }, Requests.Quick);

        Assert.Empty(PlanAudit.Check(plan));
        AssertIsBookMatched(plan, Assert.Single(plan.GlueUps));
        Assert.IsType<PlanOutcome.Impossible>(mirrored);
    }

    [Fact]
    public async Task A_single_strip_may_take_the_middle()
    {
        var request = new PlanRequest
        {
            Pile = [Requests.Offcut("W1", "black-walnut", 18 * 16, 30, 26), Requests.Offcut("M1", "sugar-maple", 18 * 16, 26, 14)],
            Gifts = [Requests.Squares("bench", ("pattern", "book-matched"), ("strips", "3"))],
        };

        var plan = await Requests.PlanOf(request);

        Assert.Empty(PlanAudit.Check(plan));
        Assert.Equal(["W1", "M1", "W1"], plan.GlueUps[0].Strips.Select(s => s.Offcut));
        AssertIsBookMatched(plan, plan.GlueUps[0]);
    }

    [Fact]
    public async Task A_set_from_several_panels_has_its_point_when_all_are_book_matched()
    {
        var request = Request(thickness: 26, Squares with { Options = Squares.Options.SetItem("count", "2").SetItem("from-panels", "each") });

        var plan = await Requests.PlanOf(request);

        Assert.Empty(PlanAudit.Check(plan));
        Assert.Equal(2, plan.GlueUps.Length);
        Assert.Equal(1, Requests.Level(plan, LevelKind.Looks).Value);
        Assert.All(plan.GlueUps, g => AssertIsBookMatched(plan, g));
    }

    [Fact]
    public async Task What_is_glued_stays_book_matched_when_planned_again()
    {
        var request = Request(thickness: 26, Squares) with { Gifts = [Squares, Requests.Squares("second", ("count", "2"))] };
        var plan = await Requests.PlanOf(request);
        var glued = plan.GlueUps.Single(g => g.Gift == "bench");
        var done = request with { Choices = DoneMarks.Glue(plan, glued.Id) };

        var again = await Requests.PlanOf(done);

        Assert.Empty(PlanAudit.Check(again));
        Assert.Equal(glued.Strips, again.GlueUps.Single(g => g.Id == glued.Id).Strips);
    }

    [Fact]
    public async Task An_order_the_maker_set_is_kept_when_planned_again_with_or_without_its_point()
    {
        var request = Request(thickness: 26, Squares);
        var plan = await Requests.PlanOf(request);
        var places = Enumerable.Range(0, plan.GlueUps[0].Strips.Length).ToArray();
        ImmutableArray<int> swapped = [1, 0, .. places[2..]];
        var turned = PlanOrder.With(plan, plan.GlueUps[0].Id, swapped);
        var reversed = PlanOrder.With(plan, plan.GlueUps[0].Id, [.. Enumerable.Reverse(places)]);

        Assert.Empty(PlanAudit.Check(turned));
        Assert.Equal([0L, 1L], new[] { turned, reversed }.Select(p => Requests.Level(p, LevelKind.Looks).Value));
        foreach (var asked in new[] { turned, reversed })
        {
            var again = await Requests.PlanOf(asked.Request);

            Assert.Empty(PlanAudit.Check(again));
            if (again.GlueUps[0].Strips.Select(ChosenStrip.Of).Order(Comparer<ChosenStrip>.Create(Compare)).SequenceEqual(asked.GlueUps[0].Strips.Select(ChosenStrip.Of).Order(Comparer<ChosenStrip>.Create(Compare))))
            {
                Assert.Equal(asked.GlueUps[0].Strips.Select(ChosenStrip.Of), again.GlueUps[0].Strips.Select(ChosenStrip.Of));
            }
        }

        static int Compare(ChosenStrip one, ChosenStrip other) => (one.Offcut, one.RoughWidth.Picometres).CompareTo((other.Offcut, other.RoughWidth.Picometres));
    }

    [Fact]
    public async Task Two_gifts_may_share_a_book_matched_panel()
    {
        var plan = await Requests.PlanOf(Request(thickness: 26, Squares with { Options = Squares.Options.SetItem("count", "2") }) with
        {
            Gifts = [Squares with { Options = Squares.Options.SetItem("count", "2") }, Squares with { Label = "second", Options = Squares.Options.SetItem("count", "2") }],
        });

        Assert.Empty(PlanAudit.Check(plan));
        Assert.Equal(2, Requests.Level(plan, LevelKind.Looks).Value);
        Assert.All(plan.GlueUps, g => AssertIsBookMatched(plan, g));
    }

    [Fact]
    public void Any_small_pile_of_thick_and_thin_wood_gives_a_plan_that_holds() => Piles.Sample(
        request =>
        {
            if (Planner.PlanAsync(request, Requests.Quick with { Seconds = 3 }).GetAwaiter().GetResult() is not PlanOutcome.Planned { Plan: var plan })
            {
                return;
            }

            Assert.Empty(PlanAudit.Check(plan));
        },
        iter: 12, threads: 1);

    private static readonly string[] Woods = ["black-walnut", "sugar-maple", "black-cherry"];

    private static readonly Gen<PlanRequest> Piles =
        from sizes in Gen.Select(Gen.Int[150, 330], Gen.Int[16, 48], Gen.Int[14, 36], Gen.Int[0, 2]).Array[4, 8]
        from strips in Gen.Int[2, 4]
        from count in Gen.Int[1, 6]
        select new PlanRequest
        {
            Workshop = "any shed",
            Pile = [.. sizes.Select((s, i) => Requests.Offcut($"P{i + 1}", Woods[s.Item4], s.Item1, s.Item2, s.Item3))],
            Gifts =
            [
                Requests.Squares("book", ("pattern", "book-matched"), ("strips", $"{strips}"), ("count", $"{count}")),
                Requests.Squares("other", ("pattern", "book-matched"), ("strips", "2"), ("count", "2")),
            ],
        };

    private static PlanRequest Request(int thickness, Gift gift) => new()
    {
        Workshop = "test shed",
        Pile =
        [
            Requests.Offcut("W1", "black-walnut", 18 * 16, 26, thickness), Requests.Offcut("M1", "sugar-maple", 18 * 16, 26, thickness),
            Requests.Offcut("W2", "black-walnut", 18 * 16, 26, thickness), Requests.Offcut("M2", "sugar-maple", 18 * 16, 26, thickness),
        ],
        Gifts = [gift],
    };

    /// <summary>Reads from the steps which layer of which resaw each strip is; ids of pieces are those of the works.</summary>
    private static void AssertIsBookMatched(Plan plan, GlueUp glueUp)
    {
        var strips = glueUp.Strips;
        for (var i = 0; i < strips.Length / 2; i++)
        {
            var (one, other) = (strips[i], strips[^(i + 1)]);
            Assert.Equal((other.Piece, one.Piece), (one.Sister, other.Sister));
            Assert.NotEqual(one.TurnedOver, other.TurnedOver);
            Assert.Equal(one.Offcut, other.Offcut);
            Assert.Equal(one.Width, other.Width);
            var resaw = Assert.Single(plan.Steps.Where(s => s.Operation == Operation.ResawStrips).SelectMany(s => s.Works), w => w.Out.Any(p => IsOf(one, p)) && w.Out.Any(p => IsOf(other, p)));
            Assert.Equal(1, Math.Abs(resaw.Out.IndexOf(resaw.Out.First(p => IsOf(one, p))) - resaw.Out.IndexOf(resaw.Out.First(p => IsOf(other, p)))));
            Assert.Equal(Start(plan, one), Start(plan, other));
        }

        static bool IsOf(Strip strip, Piece layer) => strip.Piece == layer.Id || strip.Piece.StartsWith(layer.Id + "/", StringComparison.Ordinal);
    }

    /// <summary>Where a strip begins along its layer.</summary>
    private static Length Start(Plan plan, Strip strip)
    {
        var cut = plan.Steps.Where(s => s.Operation == Operation.CrosscutStrips).SelectMany(s => s.Works).FirstOrDefault(w => w.Out.Any(p => p.Id == strip.Piece));
        return cut is null ? Length.Zero : Length.Sum(cut.Out.TakeWhile(p => p.Id != strip.Piece).Select(p => p.Length + cut.Kerf));
    }
}
