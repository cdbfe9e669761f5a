using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Sheets;

namespace Scrapwright.Planning.Tests;

/// <summary>Strips are shifted along their length, so that their clear stretches lie beside each other whatever end the knots are at.</summary>
public sealed class ShiftedStripsTests
{
    private static readonly Length Knot = Length.FromInches(4);

    [Fact]
    public async Task Knots_at_opposite_ends_leave_the_overlap_as_long_as_the_shortest_clear_run()
    {
        var needed = await NeededAsync();

        var plan = await Requests.PlanOf(Request(needed));

        // With marked ends flush only what lies between the knots would be clear in all.
        Assert.Empty(PlanAudit.Check(plan));
        var glueUp = Assert.Single(plan.GlueUps);
        Assert.Equal(needed, glueUp.Overlap);
        Assert.True(ClearInAll(plan, glueUp) < needed, "the knots do not lie at opposite ends");
        var index = PlanIndex.Of(plan);
        Assert.All(glueUp.Strips, s => Assert.Equal(s.Offcut.StartsWith('W') ? Knot : Length.Zero, index.StartOf(s.Piece)));
    }

    [Fact]
    public async Task A_clear_run_shorter_by_a_mark_is_too_short()
    {
        var needed = await NeededAsync();

        Assert.IsType<PlanOutcome.Impossible>(await Planner.PlanAsync(Request(needed - Length.FromInches(1, 32)), Requests.Quick));
    }

    [Fact]
    public async Task The_sheet_tells_where_each_strip_begins_and_that_marked_ends_lie_flush()
    {
        var plan = await Requests.PlanOf(Request(await NeededAsync()));
        var index = PlanIndex.Of(plan);
        var shifted = plan.GlueUps[0].Strips.Where(s => s.Offcut.StartsWith('W')).Select(s => s.Piece).ToList();
        var step = plan.Steps.Single(s => s.Works.Any(w => w.Out.Any(p => p.Id == shifted[0])) && s.Works.Any(w => w.Out.Length > 1) && StripWords.Of(index, s).Length > 0);

        Assert.All(shifted, piece => Assert.Equal("begins 4 in from the marked end", StripWords.Start(index, step, step.Works.SelectMany(w => w.Out).First(p => p.Id == piece), l => $"{l.Inches:0.##} in")));
        Assert.All(shifted, piece => Assert.Contains(piece, StripWords.Of(index, step)));
        var text = string.Join(" ", BenchSheets.For(plan, PaperSize.Letter).SelectMany(s => s.AllMarks).OfType<Mark.Text>().Select(t => t.Letters));
        Assert.Contains("from the marked end", text, StringComparison.Ordinal);
        Assert.Contains("lie flush", text, StringComparison.Ordinal);
    }

    /// <summary>The shared length that two squares need, told by a plan whose strips are cut to it.</summary>
    private static async Task<Length> NeededAsync() => (await Requests.PlanOf(Request(Length.FromInches(40)))).GlueUps[0].Overlap;

    /// <summary>Walnut with a knot at the marked end, maple with one at the far end, each clear over the same length.</summary>
    private static PlanRequest Request(Length clear) => Requests.FourSquares with
    {
        Pile =
        [
            .. Requests.FourSquares.Pile.Take(4).Select(o => o with
            {
                Length = clear + (o.Label[0] == 'W' ? Knot : Knot * 2),
                Defects = o.Label[0] == 'W' ? [new Defect(DefectKind.Knot, Length.Zero, Knot)] : [new Defect(DefectKind.Knot, clear, clear + (Knot * 2))],
            }),
        ],
        Gifts = [Requests.Squares("bench", ("count", "2"))],
    };

    private static Length ClearInAll(Plan plan, GlueUp glueUp)
    {
        var offcuts = plan.Stock().ToDictionary(o => o.Label);
        var used = glueUp.Strips.Select(s => offcuts[s.Offcut]).ToImmutableArray();
        var from = used.Max(o => o.Defects[0].From.IsZero ? o.Defects[0].To : Length.Zero);
        var to = used.Min(o => o.Defects[0].From.IsZero ? o.Length : o.Defects[0].From);
        return to - from;
    }
}
