using CsCheck;
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

    // [AbramowitzStegun] table 26.5, quantiles of the standard normal distribution, from memory.
    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(0.8, 0.84162)]
    [InlineData(0.9, 1.28155)]
    [InlineData(0.95, 1.64485)]
    [InlineData(0.975, 1.95996)]
    [InlineData(0.99, 2.32635)]
    [InlineData(0.995, 2.57583)]
    [InlineData(0.05, -1.64485)]
    [InlineData(0.01, -2.32635)]
    public void The_quantile_is_that_of_the_table(double share, double deviations) =>
        Assert.Equal(deviations, Chance.Quantile(share), 1e-5);

    [Fact]
    public void The_quantile_undoes_the_share() =>
        Gen.Double[-3.1, 3.1].Sample(z => Assert.Equal(z, Chance.Quantile(Chance.NormalShare(z)), 1e-4));

    [Fact]
    public void Without_spread_a_size_is_certain()
    {
        Assert.Equal(1, Chance.OfAtLeast(Length.FromInches(4), Length.Zero, Length.FromInches(4)));
        Assert.Equal(0, Chance.OfAtLeast(Length.FromInches(4), Length.Zero, Length.FromInches(4) + Length.FromPicometres(1)));
    }

    [Theory]
    [InlineData(80)]
    [InlineData(95)]
    [InlineData(99)]
    public void The_deviations_of_a_risk_give_the_chance_asked_for(int percent) =>
        Assert.Equal(percent / 100.0, Chance.NormalShare(Risk.Deviations(Risk.Allowed(percent))), 1e-6);
}
