using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Shops;

public sealed class ShopPacesTests
{
    private static readonly DateOnly Day = new(2027, 5, 4);

    [Fact]
    public void The_geometric_mean_is_that_of_a_published_example()
    {
        // [GeometricMeanExample]: 1.12, 0.92 and 1.02 have the geometric mean 1.0167.
        double[] logs = [Math.Log(1.12), Math.Log(0.92), Math.Log(1.02)];

        Assert.Equal(1.0167, ShopPaces.GeometricMean(logs, 0), 0.00005);
    }

    [Theory]
    // [ConjugateNormal]: (n x̄ + M μ₀) / (n + M) with μ₀ = ln 1 = 0 and M = 3, so one reading leaves a quarter of its logarithm, three a half, nine three quarters. By hand: 1.5^(1/4), 1.5^(1/2), 1.5^(3/4).
    [InlineData(1, 1107)]
    [InlineData(3, 1225)]
    [InlineData(9, 1355)]
    public void Few_readings_change_little_and_many_say_what_they_say(int readings, int perMille)
    {
        var paces = ShopPaces.Of(Enumerable.Repeat(Read(20, 30), readings));

        Assert.Equal(perMille, paces.For(Operation.EdgeJoint).PerMille);
        Assert.Equal(readings, paces.For(Operation.EdgeJoint).Readings);
    }

    [Fact]
    public void Twice_as_long_and_half_as_long_make_nobody_slower() =>
        Assert.Equal(1000, ShopPaces.Of([Read(10, 20), Read(10, 5)]).For(Operation.EdgeJoint).PerMille);

    [Fact]
    public void A_single_odd_reading_counts_as_four_times_at_most()
    {
        // 4^(1/4) = 1.414.
        Assert.Equal(1414, ShopPaces.Of([Read(10, 9000)]).For(Operation.EdgeJoint).PerMille);
        Assert.Equal(707, ShopPaces.Of([Read(9000, 1)]).For(Operation.EdgeJoint).PerMille);
    }

    [Fact]
    public void The_spread_is_the_makers_own_from_five_readings_on()
    {
        // Ratios 1/2, 1, 1, 1, 2: the logarithms 0 ± ln 2 have the variance 2 (ln 2)² / 4 = 0.2402, so s = 0.4901 and exp(2 s) = 2.665.
        TimeReading[] five = [Read(20, 10), Read(20, 20), Read(20, 20), Read(20, 20), Read(20, 40)];

        var four = ShopPaces.Of(five[1..]).For(Operation.EdgeJoint);
        var own = ShopPaces.Of(five).For(Operation.EdgeJoint);

        Assert.Equal((700, 1600), (four.LeastPerMille, four.MostPerMille));
        Assert.Equal((1000, 375, 2665), (own.PerMille, own.LeastPerMille, own.MostPerMille));
    }

    [Fact]
    public void Readings_that_are_all_alike_still_have_the_spread_of_a_clock_with_whole_minutes()
    {
        // exp(2 × 0.05) = 1.105.
        var pace = ShopPaces.Of(Enumerable.Repeat(Read(20, 20), 6)).For(Operation.EdgeJoint);

        Assert.Equal((905, 1105), (pace.LeastPerMille, pace.MostPerMille));
    }

    [Fact]
    public void Hand_tools_and_each_finish_have_a_pace_of_their_own()
    {
        var paces = ShopPaces.Of([Read(10, 20) with { Setting = TimeReading.ByHand }, new(Day, Operation.Finish, 10, 5) { Setting = "hard-wax" }]);

        Assert.Equal(0, paces.For(Operation.EdgeJoint).Readings);
        Assert.Equal(1189, paces.For(Operation.EdgeJoint, TimeReading.ByHand).PerMille);
        Assert.Equal(841, paces.For(Operation.Finish, "hard-wax").PerMille);
        Assert.Equal(1000, paces.For(Operation.Finish, "drying-oil").PerMille);
    }

    [Fact]
    public void Paces_are_far_apart_from_a_twentieth_on()
    {
        var once = ShopPaces.Of([Read(20, 30)]);

        Assert.True(once.IsFarFrom(ShopPaces.Usual));
        Assert.True(ShopPaces.Usual.IsFarFrom(once));
        Assert.False(once.IsFarFrom(ShopPaces.Of([Read(20, 31)])));
    }

    private static TimeReading Read(int planned, int took) => new(Day, Operation.EdgeJoint, planned, took);
}
