using CsCheck;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Milling;

public sealed class GiftMarginsTests
{
    private static Part Panel(string key, int count, int inches) => new()
    {
        Key = key,
        Title = key,
        Kind = PartKind.Panel,
        Count = count,
        Length = Length.FromInches(inches),
        Width = Length.FromInches(inches),
        Thickness = Length.FromInches(3, 8),
        Wish = new PanelWish(StripPattern.Contrast, [], 2, 8),
    };

    private static Product Product(params Part[] parts) => new() { Family = "test", Summary = "test", Parts = [.. parts], Outside = default };

    private static double Held(SizeMargins margins, int layers, int strips) =>
        (layers * Math.Log(Chance.NormalShare(margins.Width))) + ((strips + layers - 1) * Math.Log(Chance.NormalShare(margins.Thickness)))
        + (layers * Math.Log(Chance.NormalShare(margins.Length)));

    [Theory]
    [InlineData(50)]
    [InlineData(80)]
    [InlineData(95)]
    [InlineData(99)]
    public void The_sizes_of_a_gift_made_from_one_panel_a_part_hold_together_as_often_as_asked(int percent)
    {
        var margins = GiftMargins.Of(Product(Panel("small", 1, 4), Panel("large", 1, 10)), new Shop { ConfidencePercent = percent });

        var held = Math.Exp(Held(margins.OfPanel("small", 1, 1), 1, 8) + Held(margins.OfPanel("large", 1, 1), 1, 8));

        Assert.Equal(percent / 100.0, held, 1e-4);
    }

    // Every way in which glue-ups of several yields give all copies and none can be left out.
    [Fact]
    public void However_the_copies_are_shared_among_glue_ups_they_hold_together_as_often_as_asked() =>
        Gen.Select(Gen.Int[1, 12], Gen.Select(Gen.Int[1, 4], Gen.Int[1, 3]).Array[1, 8]).Where((count, modes) => IsJustEnough(count, [.. modes.Select(m => m.Item1 * m.Item2)])).Sample((count, modes) =>
        {
            var margins = GiftMargins.Of(Product(Panel("square", count, 4)), new Shop());

            var held = Math.Exp(modes.Sum(m => Held(margins.OfPanel("square", m.Item1 * m.Item2, m.Item2), m.Item2, 8)));

            Assert.True(held >= 0.95 - 1e-4, $"{held}");
        });

    [Fact]
    public void More_panels_want_more_in_hand_for_each() =>
        Assert.True(
            GiftMargins.Of(Product(Panel("a", 1, 4), Panel("b", 1, 4)), new Shop()).OfPanel("a", 1, 1).Width
            > GiftMargins.Of(Product(Panel("a", 1, 4)), new Shop()).OfPanel("a", 1, 1).Width);

    // The condition of the least cost: moving risk from any size to any other makes the wood in hand more.
    [Fact]
    public void No_other_split_of_the_risk_holds_less_wood_in_hand()
    {
        double[] costs = [1, 3, 10, 0.2];
        var split = new MarginSplit();
        foreach (var cost in costs)
        {
            split.Add(cost, 1);
        }

        var best = split.Deviations(95);
        var wood = best.Zip(costs).Sum(p => p.First * p.Second);

        Assert.Equal(0.95, best.Aggregate(1.0, (p, z) => p * Chance.NormalShare(z)), 1e-6);
        Gen.Double[0.1, 4].Array[4].Sample(other =>
        {
            var holds = other.Aggregate(1.0, (p, z) => p * Chance.NormalShare(z));

            // The share below each margin is taken as one in the condition, which costs less than a thousandth of the wood.
            Assert.True(holds < 0.95 || other.Zip(costs).Sum(p => p.First * p.Second) >= wood * 0.999);
        });
    }

    [Fact]
    public void Without_spreads_nothing_is_held_in_hand()
    {
        var none = new Allowance(Length.FromInches(1, 32), Length.Zero);
        var shop = new Shop
        {
            Allowances = new Allowances { FaceJoint = none, FacePlane = none, EdgeJoint = none, PanelFlatten = none, ResawCleanUp = none, Sand = none, EndTrim = none, WidthTrim = none },
        };
        var part = Panel("square", 2, 4);

        var needs = new PanelNeeds(part, 2, 1, shop) { Margins = GiftMargins.Of(Product(part), shop).OfPanel("square", 2, 1) };

        Assert.Equal(part.Width + Length.FromInches(1, 32), needs.RoughWidth(5));
        Assert.Equal(new PanelNeeds(part, 2, 1, shop).Overlap, needs.Overlap);
    }

    private static bool IsJustEnough(int count, int[] yields) => yields.Sum() >= count && yields.All(y => yields.Sum() - y < count);
}
