using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;

namespace Scrapwright.Core.Tests.Milling;

public sealed class CrosscutYieldTests
{
    private static readonly Length Four = Length.FromInches(4);
    private static readonly Length Eighth = Length.FromInches(1, 8);

    // Common practice, no source: four 4 in squares need 16 3/8 in with an eighth-inch saw.
    [Fact]
    public void Seventeen_inches_give_four_squares_of_four_inches() =>
        Assert.Equal(4, CrosscutYield.Count(Length.FromInches(17), Four, Eighth));

    [Fact]
    public void Sixteen_and_a_quarter_inches_give_three() =>
        Assert.Equal(3, CrosscutYield.Count(Length.FromInches(65, 4), Four, Eighth));

    [Fact]
    public void Exactly_the_length_needed_is_enough_and_a_picometre_less_is_not()
    {
        var needed = CrosscutYield.Needed(4, Four, Eighth);

        Assert.Equal(Length.FromInches(131, 8), needed);
        Assert.Equal(4, CrosscutYield.Count(needed, Four, Eighth));
        Assert.Equal(3, CrosscutYield.Count(needed - Length.FromPicometres(1), Four, Eighth));
    }

    [Fact]
    public void Without_kerf_it_is_plain_division() =>
        Assert.Equal(5, CrosscutYield.Count(Length.FromInches(20), Four, Length.Zero));

    [Fact]
    public void The_formula_equals_cutting_one_after_the_other() =>
        Gen.Select(Gen.Long[0, 4_000_000], Gen.Long[1, 500_000], Gen.Long[0, 20_000]).Sample((available, blank, kerf) =>
        {
            var left = available;
            long count = 0;
            while (left >= blank)
            {
                count++;
                left -= blank + kerf;
            }

            Assert.Equal(count, CrosscutYield.Count(
                Length.FromPicometres(available), Length.FromPicometres(blank), Length.FromPicometres(kerf)));
        });

    [Fact]
    public void A_blank_without_length_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CrosscutYield.Count(Four, Length.Zero, Eighth));
}
