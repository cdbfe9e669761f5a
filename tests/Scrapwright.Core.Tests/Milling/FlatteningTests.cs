using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;

namespace Scrapwright.Core.Tests.Milling;

public sealed class FlatteningTests
{
    // The sagitta of a chord w on a circle of radius R is w²/8R: half the chord keeps a quarter of the hollow.
    [Fact]
    public void Half_the_width_keeps_a_quarter_of_the_cup() =>
        Assert.Equal(
            Length.FromInches(1, 32),
            Flattening.HollowAfterCut(Length.FromInches(1, 8), Length.FromInches(6), Length.FromInches(3)));

    [Fact]
    public void The_hollow_follows_the_circle_it_lies_on() =>
        Gen.Select(Gen.Double[100, 600], Gen.Double[0.05, 3], Gen.Double[0.1, 1]).Sample((chord, hollow, share) =>
        {
            var radius = ((chord * chord / 4) + (hollow * hollow)) / (2 * hollow);
            var part = chord * share;
            var exact = radius - Math.Sqrt((radius * radius) - (part * part / 4));

            var found = Flattening.HollowAfterCut(
                Length.FromMillimetresRounded(hollow), Length.FromMillimetresRounded(chord), Length.FromMillimetresRounded(part));

            Assert.Equal(exact, found.Millimetres, hollow * 0.001);
        });

    [Fact]
    public void A_twist_shrinks_with_both_sides() =>
        Assert.Equal(
            Length.FromInches(1, 32),
            Flattening.TwistAfterCut(Length.FromInches(1, 8), Length.FromInches(24), Length.FromInches(4), Length.FromInches(12), Length.FromInches(2)));

    [Fact]
    public void Cup_bow_and_twist_add_up()
    {
        var offcut = new Offcut
        {
            Label = "W1",
            Species = "black-walnut",
            Length = Length.FromInches(24),
            Width = Length.FromInches(4),
            Thickness = Length.FromInches(1),
            Cup = Length.FromInches(1, 16),
            Bow = Length.FromInches(1, 8),
            Twist = Length.FromInches(1, 16),
        };

        Assert.Equal(Length.FromInches(1, 4), Flattening.Loss(offcut, offcut.Length, offcut.Width));
        Assert.Equal(
            Length.FromInches(1, 16) + Length.FromInches(1, 32) + Length.FromInches(1, 32),
            Flattening.Loss(offcut, Length.FromInches(12), offcut.Width));
    }

    [Fact]
    public void A_part_longer_than_the_whole_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            Flattening.HollowAfterCut(Length.Zero, Length.FromInches(1), Length.FromInches(2)));
}
