using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Tests.Search;

public sealed class PartWaysTests
{
    [Fact]
    public void Every_way_gives_enough_blanks_and_none_of_its_glue_ups_could_be_left_out()
    {
        var problem = ProblemMaker.Make(Requests.FourSquares);

        var ways = Assert.Single(PartWays.Of(problem, problem.Gifts[0]));

        Assert.NotEmpty(ways.Ways);
        Assert.All(ways.Ways, way =>
        {
            var blanks = way.Zip(ways.Modes).Sum(p => p.First * p.Second.Yield);
            Assert.True(blanks >= 4);
            Assert.DoesNotContain(way.Zip(ways.Modes), p => p.First > 0 && blanks - p.Second.Yield >= 4);
        });
        Assert.Contains(ways.Ways, way => way.Sum() == 1);
        Assert.Contains(ways.Ways, way => way.Sum() == 2);
    }
}
