using CsCheck;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Milling;

public sealed class PanelNeedsTests
{
    private static readonly Shop Shop = new();

    private static readonly SizeMargins Asked = SizeMargins.Each(95);

    private static Part Panel(int numerator, int denominator) => new()
    {
        Key = "square",
        Title = "square",
        Kind = PartKind.Panel,
        Count = 4,
        Length = Length.FromInches(4),
        Width = Length.FromInches(numerator, denominator),
        Thickness = Length.FromInches(3, 8),
    };

    // Common practice, no source: strips that add up to about 5 in rough come out above 4 in with a small shop's losses.
    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Five_inches_of_rough_strips_come_out_above_four(int strips)
    {
        var rough = Length.FromInches(5).Divide(strips, Rounding.Down);
        var net = StripMilling.Width(rough, Shop).End * strips;
        var needs = new PanelNeeds(Panel(4, 1), 4, 1, Shop) { Margins = Asked };

        Assert.True(net - Shop.Allowances.WidthTrim.Mean > Length.FromInches(4));
        Assert.True(net >= needs.RoughWidth(strips));
    }

    // Common practice, no source: the glue-up for a stand's 5 in plate is asked for above 5 in.
    [Fact]
    public void A_plate_of_five_inches_asks_for_more_than_five() =>
        Assert.True(new PanelNeeds(Panel(5, 1), 2, 1, Shop) { Margins = Asked }.RoughWidth(4) > Length.FromInches(21, 4));

    [Fact]
    public void Four_squares_ask_for_their_length_the_kerfs_and_both_ends() =>
        Assert.Equal(
            Length.FromInches(16) + Length.FromInches(3, 8) + Length.FromInches(1, 2),
            new PanelNeeds(Panel(4, 1), 4, 1, Shop).Overlap);

    [Fact]
    public void The_margin_of_the_width_is_never_below_the_spread_of_that_many_strips() =>
        Gen.Int[1, 12].Sample(strips =>
        {
            var needs = new PanelNeeds(Panel(4, 1), 4, 1, Shop) { Margins = Asked };
            var edges = Length.FromPicometres((long)(Shop.Allowances.EdgeJoint.Spread.Picometres * Math.Sqrt(2 * strips)));
            var ladder = needs.WidthLadder(needs.RoughWidth(strips), edges);
            var chance = Chance.OfAtLeast(ladder.Rungs[0].After, ladder.Rungs[0].Spread, Length.FromInches(4));

            Assert.True(chance >= Shop.ConfidencePercent / 100.0, $"{strips} strips: {chance}");
        });

    [Fact]
    public void Strips_as_thick_as_asked_give_every_layer_its_thickness_with_the_asked_chance() =>
        Gen.Select(Gen.Int[1, 3], Gen.Int[0, 30]).Sample((layers, sixtyFourths) =>
        {
            var spread = Length.FromInches(sixtyFourths, 640);
            var needs = new PanelNeeds(Panel(4, 1), 4, layers, Shop) { Margins = Asked };
            var strips = needs.StripThickness(spread);
            var ladder = needs.ThicknessLadder(strips, spread);
            var last = ladder.Rungs[^3];

            Assert.Equal(0.95, Chance.OfAtLeast(last.After, last.Spread, needs.PlanedThickness), 1e-4);
            Assert.Equal(Length.FromInches(3, 8), ladder.End);
        });
}
