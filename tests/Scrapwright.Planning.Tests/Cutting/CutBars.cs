using Scrapwright.Core.Measures;
using Scrapwright.Planning.Cutting;

namespace Scrapwright.Planning.Tests.Cutting;

/// <summary>Checks cut bars in exact lengths, from the problem alone.</summary>
internal static class CutBars
{
    internal static void Check(BarProblem problem, BarOutcome.Cut cut)
    {
        foreach (var bar in cut.Bars)
        {
            var pieces = bar.Pieces.SelectMany((n, i) => Enumerable.Repeat(problem.Items[i].Length, n)).ToList();
            Assert.NotEmpty(pieces);
            Assert.True(Length.Sum(pieces) + (problem.Kerf * (pieces.Count - 1)) <= problem.Stocks[bar.Stock].Length);
        }

        Assert.Equal(problem.Items.Select(i => i.Count), problem.Items.Select((_, i) => cut.Bars.Sum(b => b.Pieces[i])));
        Assert.All(problem.Stocks.Select((s, i) => (s, i)), x => Assert.True(cut.Bars.Count(b => b.Stock == x.i) <= (x.s.Available ?? int.MaxValue)));
        Assert.Equal(cut.Cost, cut.Bars.Sum(b => problem.Stocks[b.Stock].Price));
        Assert.True(cut.Bound <= cut.Cost);
    }
}
