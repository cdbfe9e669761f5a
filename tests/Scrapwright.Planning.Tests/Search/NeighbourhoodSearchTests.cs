using Scrapwright.Core.Plans;
using Scrapwright.Files;
using Scrapwright.Planning.Building;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Tests.Search;

public sealed class NeighbourhoodSearchTests
{
    [Fact]
    public void A_neighbourhood_never_makes_a_placement_worse_and_what_it_finds_holds()
    {
        var problem = ProblemMaker.Make(ExampleWorkshop.Request);
        var options = new SegmentOptions(problem);
        var first = FirstPlacement.Find(problem, options);
        var bound = new WoodBound(problem, options, first.ValueOf(LevelKind.GiftsMade));
        bound.Run(first, mostRounds: 5, limit: null, CancellationToken.None);
        var priced = new PricedPlacement(problem, options, bound.Groups, bound.Prices);
        var search = new NeighbourhoodSearch(problem, options, Requests.Quick, priced, first);

        foreach (var kind in new[] { LevelKind.Looks, LevelKind.WoodUsed, LevelKind.WoodUsed })
        {
            var before = search.Current;
            search.Improve(kind, 1.5, p => PlanBuilder.FindUnorderable(problem, p), CancellationToken.None);
            Assert.False(NeighbourhoodSearch.IsBetter(before, search.Current));
        }

        Assert.True(NeighbourhoodSearch.IsBetter(search.Current, first), "three neighbourhoods found nothing");
        var plan = PlanBuilder.Build(problem, search.Current, problem.Levels.ToDictionary(k => k, k => PlacementValues.TrivialBound(problem, k)));
        Assert.Empty(PlanAudit.Check(plan));
    }

    [Fact]
    public void A_placement_by_prices_holds()
    {
        var problem = ProblemMaker.Make(Requests.FourSquares);
        var options = new SegmentOptions(problem);
        var first = FirstPlacement.Find(problem, options);
        var bound = new WoodBound(problem, options, first.ValueOf(LevelKind.GiftsMade));
        bound.Run(first, mostRounds: 5, limit: null, CancellationToken.None);

        var placed = new PricedPlacement(problem, options, bound.Groups, bound.Prices).PlaceAll([0]);

        Assert.True(placed.Made[0]);
        Assert.InRange(placed.ValueOf(LevelKind.WoodUsed), bound.Value, long.MaxValue);
        Assert.Empty(PlanAudit.Check(PlanBuilder.Build(problem, placed, problem.Levels.ToDictionary(k => k, k => PlacementValues.TrivialBound(problem, k)))));
    }
}
