using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Planning.Cutting;

namespace Scrapwright.Planning.Tests.Cutting;

public sealed class BarSolverTests
{
    private static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);

    private static BarOutcome Solve(BarProblem problem) => BarSolver.Solve(problem, new BarLimits(), TestContext.Current.CancellationToken);

    [Fact]
    public void A_picometre_too_much_takes_another_bar()
    {
        var kerf = Length.FromInches(1, 8);
        var bar = Length.FromInches(36);
        var half = (bar - kerf).Divide(2, Rounding.Down);
        BarProblem Two(Length piece) => new([new BarItem(piece, 2)], [new BarStock(bar, 1)], kerf);

        Assert.Equal(1, Assert.IsType<BarOutcome.Cut>(Solve(Two(half))).Cost);
        Assert.Equal(2, Assert.IsType<BarOutcome.Cut>(Solve(Two(half + Length.FromPicometres(1)))).Cost);
    }

    [Fact]
    public void Unlike_bars_are_bought_by_price()
    {
        // Three of 600 mm: from one bar of 2 m for 4, or from one of 1.3 m for 3 and one of 1 m for 2.
        var problem = new BarProblem([new BarItem(Mm(600), 3)], [new BarStock(Mm(1000), 2), new BarStock(Mm(1300), 3), new BarStock(Mm(2000), 4)], Mm(3));

        var cut = Assert.IsType<BarOutcome.Cut>(Solve(problem));

        Assert.Equal((4L, 4L), (cut.Cost, cut.Bound));
        Assert.Equal(2, Assert.Single(cut.Bars).Stock);
    }

    [Fact]
    public void A_piece_longer_than_every_bar_is_named()
    {
        var problem = new BarProblem([new BarItem(Mm(100), 1), new BarItem(Mm(1001), 2)], [new BarStock(Mm(1000), 1)], Mm(3));

        Assert.Equal([1], Assert.IsType<BarOutcome.Short>(Solve(problem)).TooLong);
    }

    [Fact]
    public void Too_few_bars_are_too_few()
    {
        BarProblem Problem(int bars) => new([new BarItem(Mm(400), 5)], [new BarStock(Mm(1000), 1, bars)], Mm(3));

        Assert.True(Assert.IsType<BarOutcome.Short>(Solve(Problem(2))).IsProven);
        Assert.Equal(3, Assert.IsType<BarOutcome.Cut>(Solve(Problem(3))).Cost);
    }

    [Fact]
    public void A_cancelled_search_still_cuts_every_piece()
    {
        using var ended = new CancellationTokenSource();
        ended.Cancel();
        var problem = new BarProblem([new BarItem(Mm(333), 7), new BarItem(Mm(250), 9), new BarItem(Mm(411), 4)], [new BarStock(Mm(1000), 1)], Mm(3));

        CutBars.Check(problem, Assert.IsType<BarOutcome.Cut>(BarSolver.Solve(problem, new BarLimits(), ended.Token)));
    }

    [Fact]
    public void Same_problem_same_bars()
    {
        var problem = new BarProblem(
            [.. Enumerable.Range(0, 12).Select(i => new BarItem(Mm(137 + (i * 41 % 390)), 1 + (i % 3)))], [new BarStock(Mm(1000), 1)], Mm(3));

        Assert.Equal(
            Assert.IsType<BarOutcome.Cut>(Solve(problem)).Bars.Select(b => string.Join(',', b.Pieces)),
            Assert.IsType<BarOutcome.Cut>(Solve(problem)).Bars.Select(b => string.Join(',', b.Pieces)));
    }

    [Fact]
    public void No_way_is_cheaper_than_the_one_found() =>
        Gen.Select(Gen.Int[1, 12].Array[1, 7], Gen.Select(Gen.Int[6, 16], Gen.Int[1, 5], Gen.Int[0, 3]).Array[1, 3], Gen.Int[0, 2]).Sample(
            (pieces, stocks, kerf) =>
            {
                var problem = new BarProblem(
                    [.. pieces.GroupBy(p => p).Select(g => new BarItem(Mm(g.Key), g.Count()))],
                    [.. stocks.Select(s => new BarStock(Mm(s.Item1), s.Item2, s.Item3 == 0 ? null : s.Item3))],
                    Mm(kerf));
                var cheapest = Cheapest(pieces, [.. stocks.Select(s => (s.Item1, s.Item2, s.Item3 == 0 ? 99 : s.Item3))], kerf);

                var outcome = Solve(problem);

                if (outcome is BarOutcome.Cut cut)
                {
                    Assert.Equal((cheapest, cheapest), (cut.Cost, cut.Bound));
                    CutBars.Check(problem, cut);
                }
                else
                {
                    Assert.Null(cheapest);
                    Assert.True(Assert.IsType<BarOutcome.Short>(outcome).IsProven);
                }
            },
            iter: 300,
            threads: 1);

    /// <summary>The least cost by trying every way; null when there is none.</summary>
    private static long? Cheapest(int[] pieces, (int Length, int Price, int Count)[] stocks, int kerf)
    {
        long? best = null;
        var left = stocks.Select(s => s.Count).ToArray();
        var open = new List<int>();
        void Go(int piece, long cost)
        {
            if (cost >= best) return;
            if (piece == pieces.Length)
            {
                best = cost;
                return;
            }

            var size = pieces[piece] + kerf;
            for (var b = 0; b < open.Count; b++)
            {
                if (open[b] < size) continue;
                open[b] -= size;
                Go(piece + 1, cost);
                open[b] += size;
            }

            for (var s = 0; s < stocks.Length; s++)
            {
                if (left[s] == 0 || stocks[s].Length < pieces[piece]) continue;
                left[s]--;
                open.Add(stocks[s].Length + kerf - size);
                Go(piece + 1, cost + stocks[s].Price);
                open.RemoveAt(open.Count - 1);
                left[s]++;
            }
        }

        Go(0, 0);
        return best;
    }
}
