using System.Collections.Immutable;
using CsCheck;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Plans;

public sealed class StripOrdersTests
{
    private static readonly Dictionary<char, string> Woods = new() { ['W'] = "black-walnut", ['M'] = "sugar-maple", ['C'] = "black-cherry" };

    private static readonly string[] Kinds = ["W1", "W2", "M1", "C1"];

    [Fact]
    public void Orders_are_those_that_trying_every_permutation_finds() =>
        Gen.Int[0, 3].Array[1, 6].Sample(
            kinds =>
            {
                string[] panel = [.. kinds.Select(kind => Kinds[kind])];
                var index = IndexOf(string.Join(' ', panel));
                var glueUp = index.Plan.GlueUps[0];
                var wish = index.Product("g0")!.Parts[0].Wish;
                var expected = Permutations([.. Enumerable.Range(0, panel.Length)])
                    .Select(order => order.Select(i => panel[i]).ToArray())
                    .Where(order => PanelOrder.Keeps([.. order.Select(strip => Woods[strip[0]])], wish, index.Plan.Request.Shop))
                    .Select(OneWayRound).ToHashSet();
                expected.Remove(OneWayRound(panel));

                var found = StripOrders.Of(index, glueUp);

                Assert.All(found, order => Assert.Equal(Enumerable.Range(0, panel.Length), order.Order()));
                var looks = found.Select(order => OneWayRound([.. order.Select(i => panel[i])])).ToList();
                Assert.Equal(looks.Count, looks.Distinct().Count());
                Assert.True(expected.SetEquals(looks), $"{string.Join(' ', panel)}: found {string.Join(" | ", looks)}");
            },
            iter: 200, threads: 1);

    [Fact]
    public void Mirrored_orders_come_first_then_those_of_most_contrast()
    {
        var index = IndexOf("W1 M1 C1 W1 M1");
        string[] panel = ["W1", "M1", "C1", "W1", "M1"];

        var found = StripOrders.Of(index, index.Plan.GlueUps[0]).Select(order => order.Select(i => panel[i]).ToArray()).ToList();

        Assert.All(found.Take(2), order => Assert.Equal(order, order.Reverse()));
        Assert.All(found.Skip(2), order => Assert.NotEqual(order, order.Reverse()));
        var contrasts = found.Skip(2).Select(order => PanelOrder.LeastContrast([.. order.Select(s => Woods[s[0]])])).ToList();
        Assert.Equal(contrasts.OrderDescending(), contrasts);
    }

    [Fact]
    public void Very_many_strips_still_give_orders()
    {
        var index = IndexOf("W1 M1 C1 W2 M2 C2 W3 M3 C3 W4 M4 C4");

        var found = StripOrders.Of(index, index.Plan.GlueUps[0]);

        Assert.InRange(found.Length, 1000, 2000);
    }

    [Fact]
    public void Figures_follow_the_order()
    {
        var index = PlanIndex.Of(ExamplePlans.Squares);
        var alike = PlanIndex.Of(PlanOrder.With(ExamplePlans.Squares, "G1", [0, 2, 1, 3]));
        var contrast = ColourDifference.Ciede2000(SpeciesTable.Get("black-walnut").Colour, SpeciesTable.Get("sugar-maple").Colour);

        var before = OrderFigures.Of(index, "G1");
        var now = OrderFigures.Of(alike, "G1");

        Assert.Equal((contrast, contrast), (before.LeastDeltaE!.Value, before.MeanDeltaE!.Value));

        // Walnut, walnut, maple, maple: one of three joints shows.
        Assert.Equal((0, contrast / 3), (now.LeastDeltaE!.Value, now.MeanDeltaE!.Value));
        Assert.Equal(before.Width, now.Width);
        Assert.Equal(ExamplePlans.Squares.GlueUps[0].TargetWidth, Length.Sum(now.Trimmed.Select(l => l.Width)));
        Assert.Equal(["W1", "W2", "M1", "M2"], now.Trimmed.Select(l => l.Offcut));
        Assert.Null(before.MostAlike);
        Assert.Throws<ArgumentException>(() => OrderFigures.Of(index, "G9"));
    }

    [Fact]
    public void The_most_alike_gift_of_the_circle_is_found_and_its_difference_follows_the_order()
    {
        var alike = GiftDifference.FindMostAlike(IndexOf("W1 M1 W1 M1", "M1 M1 W1 W1", "W1 M1 W1 M1"), "g0")!;
        Assert.Equal(("g2", 0), (alike.Other, alike.DeltaE!.Value));

        var other = GiftDifference.FindMostAlike(IndexOf("W1 M1 W1 M1", "M1 M1 W1 W1"), "g0")!;
        Assert.Equal(("g1", GiftDifference.Of(IndexOf("W1 M1 W1 M1", "M1 M1 W1 W1"))[0].DeltaE), (other.Other, other.DeltaE));
        Assert.Null(GiftDifference.FindMostAlike(IndexOf("W1 M1"), "g0"));
    }

    private static string OneWayRound(string[] panel)
    {
        var (one, other) = (string.Join(' ', panel), string.Join(' ', panel.Reverse()));
        return string.CompareOrdinal(one, other) <= 0 ? one : other;
    }

    private static IEnumerable<ImmutableList<int>> Permutations(ImmutableList<int> left) => left.IsEmpty
        ? [[]]
        : left.SelectMany(first => Permutations(left.Remove(first)).Select(rest => rest.Insert(0, first)));

    // "W3 M1": a walnut strip three times as wide as a maple one.
    private static PlanIndex IndexOf(params string[] panels)
    {
        var plan = ExamplePlans.Squares;
        ImmutableArray<Gift> gifts = [.. panels.Select((_, i) => new Gift { Label = $"g{i}", Design = "striped-squares", Circle = "club" })];
        var offcut = plan.Request.Pile[0] with { Count = 1 };
        return PlanIndex.Of(plan with
        {
            Request = plan.Request with { Gifts = gifts, Pile = [.. Woods.Select(wood => offcut with { Label = $"{wood.Key}", Species = wood.Value })] },
            Made = [.. gifts.Select(g => new MadeGift(g.Label, []))],
            GlueUps = [.. panels.Select((p, i) => plan.GlueUps[0] with { Id = $"G{i}", Gift = $"g{i}", Strips = Strips(p) })],
        });
    }

    private static ImmutableArray<Strip> Strips(string panel) =>
        [.. panel.Split(' ').Select((s, i) => new Strip($"{s}.{i}", s[..1], default, Length.FromInches(s[1] - '0'), Length.FromInches(10), Length.FromInches(1)))];
}
