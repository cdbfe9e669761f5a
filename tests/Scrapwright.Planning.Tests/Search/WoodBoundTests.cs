using CsCheck;
using Scrapwright.Core.Plans;
using Scrapwright.Files;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Tests.Search;

public sealed class WoodBoundTests
{
    private static readonly string[] Woods = ["black-walnut", "sugar-maple", "black-cherry", "white-ash"];

    [Fact]
    public void The_bound_is_never_above_what_a_placement_uses() =>
        Gen.Select(Gen.Int[0, 3], Gen.Int[20, 60], Gen.Int[13, 20]).Array[10].Sample(
            sizes =>
            {
                var problem = ProblemMaker.Make(new PlanRequest
                {
                    Pile = [.. sizes.Select((s, i) => Requests.Offcut($"X{i}", Woods[s.Item1], 14 * 16, s.Item2, s.Item3))],
                    Gifts = [Requests.Squares("one", ("count", "2")), Requests.Squares("two", ("count", "2"), ("size", "3 in"))],
                });
                var options = new SegmentOptions(problem);
                var greedy = FirstPlacement.Find(problem, options);
                var bound = new WoodBound(problem, options, greedy.ValueOf(LevelKind.GiftsMade));

                bound.Run(greedy, mostRounds: 50, limit: null, CancellationToken.None);

                Assert.InRange(bound.Value, 0, greedy.ValueOf(LevelKind.WoodUsed));
                Assert.InRange(bound.LeastGlueUps, 0, greedy.ValueOf(LevelKind.ClampLoads));
                Assert.All(bound.Prices, price => Assert.True(price >= 0));
            },
            iter: 20, threads: 1);

    [Fact]
    public void Whole_fillings_bound_more_closely_than_mixtures_of_strips()
    {
        var problem = ProblemMaker.Make(ExampleWorkshop.Request);
        var options = new SegmentOptions(problem);
        var greedy = FirstPlacement.Find(problem, options);
        var worth = greedy.ValueOf(LevelKind.GiftsMade);
        var mixtures = new WoodBound(problem, options, worth);
        var fillings = new WoodBound(problem, options, worth);

        mixtures.Run(greedy, mostRounds: 0, limit: null, CancellationToken.None);
        fillings.Run(greedy, mostRounds: 40, limit: null, CancellationToken.None);

        Assert.True(mixtures.Value > 0.7 * greedy.ValueOf(LevelKind.WoodUsed), $"{mixtures.Value}");
        Assert.True(fillings.Value > mixtures.Value);
        Assert.True(fillings.Value <= greedy.ValueOf(LevelKind.WoodUsed));
    }
}
