using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Tests.Search;

public sealed class SpeciesConflictsTests
{
    private static readonly SpeciesConflicts Three = new(["black-walnut", "sugar-maple", "paper-birch"], 8);

    [Fact]
    public void Woods_that_look_alike_are_one_clique()
    {
        Assert.True(SpeciesConflicts.LookAlike("sugar-maple", "paper-birch", 8));
        Assert.Equal(2, Three.Cliques().Length);
        Assert.Contains(Three.Cliques(), c => c.SetEquals(["sugar-maple", "paper-birch"]));
        Assert.Contains(Three.Cliques(), c => c.SetEquals(["black-walnut"]));
    }

    [Fact]
    public void What_goes_beside_a_clique_is_what_goes_beside_one_of_it() =>
        Assert.Equal(["black-walnut"], Three.GoingWithAny(["sugar-maple", "paper-birch"]));
}
