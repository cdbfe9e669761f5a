using System.Globalization;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Planning;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Benchmarks.Planning;

/// <summary>Gifts made and wood kept by the planner, by the first placement and by a careful maker, over generated piles too small for all their gifts or not.</summary>
internal static class BaselineTable
{
    private const double Seconds = 5;

    internal static async Task<int> RunAsync(string[] args)
    {
        var piles = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 30;
        List<Row> rows = [];
        for (var seed = 1; seed <= piles; seed++)
        {
            // From scarce to ample: 20 to 49 offcuts for 12 gifts.
            var request = Instances.Large(19 + seed, 12, seed);
            var problem = ProblemMaker.Make(request);
            var options = new SegmentOptions(problem);
            var byHand = CarefulMaker.Place(problem, options);
            var first = FirstPlacement.Find(problem, options);
            var outcome = await Planner.PlanAsync(request, new PlanLimits { Seconds = Seconds });
            var plan = (outcome as PlanOutcome.Planned)?.Plan;
            var pile = request.Pile.Sum(o => (double)Volume.Of(o.Length, o.Width, o.Thickness).CubicPicometres / 1e27);
            rows.Add(new Row(
                byHand.Made.Count(m => m), first.Made.Count(m => m), plan?.Made.Length ?? 0,
                pile - byHand.ValueOf(LevelKind.WoodUsed), pile - first.ValueOf(LevelKind.WoodUsed), pile - (plan?.Levels.Single(l => l.Kind == LevelKind.WoodUsed).Value ?? 0),
                PerGift(byHand), PerGift(first), plan is null ? 0 : plan.Levels.Single(l => l.Kind == LevelKind.WoodUsed).Value / (double)plan.Made.Length));
            Console.WriteLine($"// pile {seed}: by hand {rows[^1].HandGifts}, first {rows[^1].FirstGifts}, planner {rows[^1].OurGifts}");
        }

        Console.WriteLine($"| {piles} piles of 20 to {19 + piles} offcuts, 12 gifts, {Seconds:0} s each | careful maker | first placement | planner |");
        Console.WriteLine("|---|---:|---:|---:|");
        Console.WriteLine($"| gifts made | {rows.Sum(r => r.HandGifts)} | {rows.Sum(r => r.FirstGifts)} | {rows.Sum(r => r.OurGifts)} |");
        Console.WriteLine($"| gifts made, ratio to the careful maker's | 1 | {Ratio(r => r.FirstGifts, r => r.HandGifts)} | {Ratio(r => r.OurGifts, r => r.HandGifts)} |");
        Console.WriteLine($"| wood used per gift made, ratio, mean over piles | 1 | {Mean(r => r.FirstPerGift / r.HandPerGift)} | {Mean(r => r.OurPerGift / r.HandPerGift)} |");
        var equal = rows.Where(r => r.HandGifts == r.OurGifts && r.FirstGifts == r.OurGifts).ToList();
        Console.WriteLine($"| wood kept, ratio, mean over the {equal.Count} piles where all make as many gifts | 1 | {Mean(r => r.FirstKept / r.HandKept, equal)} | {Mean(r => r.OurKept / r.HandKept, equal)} |");
        return 0;

        string Ratio(Func<Row, double> ours, Func<Row, double> theirs) => (rows.Sum(ours) / rows.Sum(theirs)).ToString("0.00", CultureInfo.InvariantCulture);

        string Mean(Func<Row, double> value, List<Row>? of = null) =>
            (of ?? rows).Select(value).Where(double.IsFinite).DefaultIfEmpty(double.NaN).Average().ToString("0.00", CultureInfo.InvariantCulture);
    }

    private static double PerGift(Placement placement) => placement.ValueOf(LevelKind.WoodUsed) / (double)placement.Made.Count(m => m);

    private sealed record Row(
        int HandGifts, int FirstGifts, int OurGifts, double HandKept, double FirstKept, double OurKept, double HandPerGift, double FirstPerGift, double OurPerGift);
}
