using System.Collections.Immutable;
using CsCheck;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Wood;
using Scrapwright.Planning.Building;

namespace Scrapwright.Planning.Tests.Building;

public sealed class StripOrderTests
{
    private static readonly string[] Woods = ["black-walnut", "sugar-maple", "black-cherry", "white-ash", "yellow-birch", "sapele"];

    private static PanelWish Wish(StripPattern pattern) => new(pattern, [], 2, 12);

    private static double Difference(string one, string other) =>
        one == other ? 0 : ColourDifference.Ciede2000(SpeciesTable.Get(one).Colour, SpeciesTable.Get(other).Colour);

    private static IEnumerable<ImmutableList<string>> Orders(ImmutableList<string> strips) => strips.Count < 2
        ? [strips]
        : strips.Distinct().SelectMany(first => Orders(strips.Remove(first)).Select(rest => rest.Insert(0, first)));

    [Fact]
    public void The_least_contrast_is_the_best_of_all_orders() =>
        Gen.Int[0, Woods.Length - 1].Array[2, 6].Sample(
            places =>
            {
                ImmutableArray<string> species = [.. places.Select(p => Woods[p])];
                var best = Orders([.. species]).Max(o => o.Zip(o.Skip(1)).Min(p => Difference(p.First, p.Second)));

                var found = StripOrder.Find(species, Wish(StripPattern.Contrast), 8);

                if (best < 8)
                {
                    Assert.Null(found);
                    return;
                }

                var order = found!.Value.Select(i => species[i]).ToList();
                Assert.Equal(best, order.Zip(order.Skip(1)).Min(p => Difference(p.First, p.Second)), 1e-9);
                Assert.Equal(Enumerable.Range(0, species.Length), found.Value.Order());
            },
            iter: 60);

    [Fact]
    public void A_mirrored_panel_reads_the_same_from_both_edges()
    {
        ImmutableArray<string> species = ["sugar-maple", "black-walnut", "sugar-maple", "black-walnut", "sugar-maple", "black-cherry", "black-cherry"];

        var order = StripOrder.Find(species, Wish(StripPattern.Mirrored), 5)!.Value.Select(i => species[i]).ToList();

        Assert.Equal(order, Enumerable.Reverse(order));
    }

    [Fact]
    public void Sisters_of_one_wood_touch_in_the_middle_alone()
    {
        ImmutableArray<string> species = ["black-walnut", "sugar-maple", "black-walnut", "sugar-maple"];

        var order = StripOrder.BookMatched(species, [2, 3, 0, 1], 8)!.Value;

        Assert.Equal([1, 0, 2, 3], order[0] == 1 ? order : [.. order.Select(i => i ^ 1)]);
        Assert.Null(StripOrder.BookMatched(["black-walnut", "black-walnut", "black-walnut", "black-walnut"], [1, 0, 3, 2], 8));
    }

    [Fact]
    public void A_strip_without_a_sister_takes_the_middle_and_two_of_them_cannot()
    {
        Assert.Equal([1, 0, 2], StripOrder.BookMatched(["sugar-maple", "black-walnut", "black-walnut"], [-1, 2, 1], 8)!.Value);
        Assert.Null(StripOrder.BookMatched(["black-walnut", "black-walnut", "black-walnut"], [-1, 2, 1], 8));
        Assert.Null(StripOrder.BookMatched(["sugar-maple", "black-walnut", "black-walnut", "sugar-maple"], [-1, 2, 1, -1], 8));
    }

    [Fact]
    public void A_graduated_panel_goes_from_light_to_dark()
    {
        ImmutableArray<string> species = ["black-walnut", "sugar-maple", "black-cherry"];

        var order = StripOrder.Find(species, Wish(StripPattern.Graduated), 8)!.Value.Select(i => species[i]);

        Assert.Equal(["sugar-maple", "black-cherry", "black-walnut"], order);
    }

    [Fact]
    public void Two_alike_cannot_lie_side_by_side() =>
        Assert.Null(StripOrder.Find(["black-walnut", "black-walnut"], Wish(StripPattern.Contrast), 8));
}
