using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Plans;

public sealed class GiftDifferenceTests
{
    private static readonly double WalnutMaple = ColourDifference.Ciede2000(SpeciesTable.Get("black-walnut").Colour, SpeciesTable.Get("sugar-maple").Colour);

    [Theory]
    [InlineData("W1 M1 W1", "W2 M2 W2", 0)]
    [InlineData("W1 M2", "M2 W1", 0)]
    [InlineData("W1 M1", "W3 M3", 0)]
    [InlineData("W1 M1", "W1 W1", 0.5)]
    [InlineData("W1 W1", "M1 M1", 1)]
    [InlineData("W1 M1 W1 M1", "M1 M1 W1 W1", 0.5)]
    [InlineData("W3 M1", "W2 M2", 0.25)]
    public void Panels_are_laid_on_each_other_at_one_width_and_turned_to_look_most_alike(string one, string other, double shareOfWidth)
    {
        var difference = Assert.Single(GiftDifference.Of(IndexOf(one, other)));

        Assert.Equal(shareOfWidth * WalnutMaple, difference.DeltaE!.Value, 9);
    }

    [Fact]
    public void Only_made_gifts_of_one_circle_are_compared_and_the_most_alike_come_first()
    {
        var index = IndexOf("W1 M1", "W1 M1", "M1 M1");

        var differences = GiftDifference.Of(index);

        Assert.Equal([("g0", "g1"), ("g0", "g2"), ("g1", "g2")], differences.Select(d => (d.One, d.Other)));
        Assert.Equal("nearly the same stripes", differences[0].Words);
        Assert.Equal("clearly different stripes", differences[1].Words);
        Assert.Empty(GiftDifference.Of(IndexOf("W1 M1")));
    }

    // "W3 M1": a walnut strip three times as wide as a maple one.
    private static PlanIndex IndexOf(params string[] panels)
    {
        var plan = ExamplePlans.Squares;
        ImmutableArray<Gift> gifts = [.. panels.Select((_, i) => new Gift { Label = $"g{i}", Design = "striped-squares", Circle = i % 2 == 0 ? "club" : "Club" })];
        var walnut = plan.Request.Pile[0] with { Label = "W", Species = "black-walnut", Count = 1 };
        return PlanIndex.Of(plan with
        {
            Request = plan.Request with { Gifts = gifts, Pile = [walnut, walnut with { Label = "M", Species = "sugar-maple" }] },
            Made = [.. gifts.Select(g => new MadeGift(g.Label, []))],
            GlueUps = [.. panels.Select((p, i) => plan.GlueUps[0] with { Id = $"G{i}", Gift = $"g{i}", Strips = Strips(p) })],
        });
    }

    private static ImmutableArray<Strip> Strips(string panel) =>
        [.. panel.Split(' ').Select((s, i) => new Strip($"{s}.{i}", s[..1], default, Length.FromInches(s[1] - '0'), Length.FromInches(10), Length.FromInches(1)))];
}
