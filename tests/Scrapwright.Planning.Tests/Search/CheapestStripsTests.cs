using System.Collections.Immutable;
using CsCheck;
using Scrapwright.Core.Plans;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Tests.Search;

/// <summary>The cheapest strips of a glue-up against trying every order of every choice of up to four strips.</summary>
public sealed class CheapestStripsTests
{
    private static readonly string[] Woods = ["black-walnut", "sugar-maple", "black-cherry"];

    private static readonly Gen<((int Wood, int Width)[] Strips, int[] Costs)> Piles =
        Gen.Select(Gen.Select(Gen.Int[0, 2], Gen.Int[18, 40]).Array[5], Gen.Int[1, 100].Array[5]);

    [Fact]
    public void A_filling_holds_and_the_bound_is_never_above_the_cheapest() =>
        Piles.Sample(
            pile =>
            {
                var problem = ProblemMaker.Make(Request(pile.Strips));
                var options = new SegmentOptions(problem);
                var panel = problem.Panels.First(p => p.Needs is { Blanks: 2, Layers: 1 });
                var all = options.ForPanel(panel.Index);
                double[] costs = [.. all.Select(o => (double)pile.Costs[problem.Patterns[o.Segment.Pattern].OffcutIndex])];

                var bound = new CheapestStrips(problem, panel, all, isBound: true).Find(costs);
                var filling = new CheapestStrips(problem, panel, all, isBound: false).Find(costs);

                if (Cheapest(panel, all, costs, problem.Shop.MinimumContrast) is { } best)
                {
                    Assert.NotNull(bound);
                    Assert.True(bound.Value.Cost <= best, $"bound {bound.Value.Cost}, cheapest {best}");
                }

                if (filling is { } found)
                {
                    Assert.Equal(found.Cost, found.Options.Sum(i => costs[i]));
                    Assert.True(FillsTheWidth(panel, [.. found.Options.Select(i => all[i])]));
                    Assert.DoesNotContain(
                        found.Options.Zip(found.Options.Skip(1)),
                        pair => SpeciesConflicts.LookAlike(all[pair.First].Species, all[pair.Second].Species, problem.Shop.MinimumContrast));
                    Assert.True(bound!.Value.Cost <= found.Cost);
                }
            },
            iter: 60, threads: 1);

    [Fact]
    public void An_option_that_may_not_be_taken_is_not_taken()
    {
        var problem = ProblemMaker.Make(Requests.FourSquares);
        var panel = problem.Panels[0];
        var all = new SegmentOptions(problem).ForPanel(panel.Index);
        var filler = new CheapestStrips(problem, panel, all, isBound: false);

        double[] costs = [.. all.Select(o => o.Species == "sugar-maple" ? double.PositiveInfinity : 1)];

        // Walnut beside walnut is no stripe.
        Assert.Null(filler.Find(costs));
        Assert.NotNull(filler.Find([.. all.Select(_ => 1.0)]));
    }

    private static PlanRequest Request((int Wood, int Width)[] strips) => new()
    {
        Pile = [.. strips.Select((s, i) => Requests.Offcut($"X{i}", Woods[s.Wood], 12 * 16, s.Width, 14))],
        Gifts = [Requests.Squares("one", ("count", "2"), ("size", "3 in"))],
    };

    /// <summary>Each option at most once; the filler may take one twice, so only fillings without that count here.</summary>
    private static double? Cheapest(PanelCandidate panel, ImmutableArray<SegmentOption> all, double[] costs, double contrast)
    {
        double? best = null;
        Extend([], 0);
        return best;

        void Extend(ImmutableArray<int> taken, double cost)
        {
            if (taken.Length >= panel.Wish.MinimumStrips && FillsTheWidth(panel, [.. taken.Select(i => all[i])]) && (best is null || cost < best))
            {
                best = cost;
            }

            for (var i = 0; i < all.Length && taken.Length < 4; i++)
            {
                if (!taken.Contains(i) && (taken.IsEmpty || !SpeciesConflicts.LookAlike(all[taken[^1]].Species, all[i].Species, contrast)))
                {
                    Extend(taken.Add(i), cost + costs[i]);
                }
            }
        }
    }

    private static bool FillsTheWidth(PanelCandidate panel, ImmutableArray<SegmentOption> strips) =>
        strips.Sum(s => s.Filling) >= Grid.Hundredths.Up(panel.Needs.WidthBase);
}
