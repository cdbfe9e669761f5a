using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;

namespace Scrapwright.Core.Tests.Milling;

public sealed class ChanceReferenceTests
{
    // [AbramowitzStegun] table 26.1, values from memory.
    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(1, 0.8413447)]
    [InlineData(1.5, 0.9331928)]
    [InlineData(2, 0.9772499)]
    [InlineData(3, 0.9986501)]
    [InlineData(-1, 0.1586553)]
    public void The_normal_share_is_that_of_the_table(double z, double share) =>
        Assert.Equal(share, Chance.NormalShare(z), 1.5e-7);

    // Quantiles of the standard normal distribution, from memory.
    [Theory]
    [InlineData(90, 1.281552)]
    [InlineData(95, 1.644854)]
    [InlineData(99, 2.326348)]
    [InlineData(50, 0)]
    public void The_deviations_are_the_quantiles(int percent, double deviations) =>
        Assert.Equal(deviations, Chance.Deviations(percent), 5e-6);

    [Theory]
    [InlineData(49)]
    [InlineData(100)]
    public void Other_chances_are_refused(int percent) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Chance.Deviations(percent));

    [Fact]
    public void Without_spread_a_size_is_certain()
    {
        Assert.Equal(1, Chance.OfAtLeast(Length.FromInches(4), Length.Zero, Length.FromInches(4)));
        Assert.Equal(0, Chance.OfAtLeast(Length.FromInches(4), Length.Zero, Length.FromInches(4) + Length.FromPicometres(1)));
    }

    [Fact]
    public void The_margin_gives_the_asked_chance()
    {
        var spread = Length.FromInches(1, 64);
        var target = Length.FromInches(4);

        Assert.Equal(0.95, Chance.OfAtLeast(target + Chance.Margin(spread, Chance.Deviations(95)), spread, target), 1e-6);
    }
}
