using CsCheck;
using Scrapwright.Core.Finishing;

namespace Scrapwright.Core.Tests.Finishing;

public sealed class ClampTimeTests
{
    private static readonly Glue White = GlueTable.Find("white-glue")!;

    [Fact]
    public void At_the_tables_temperature_the_times_are_the_tables()
    {
        var sets = Assert.IsType<ClampTime.Sets>(ClampTime.At(White, 21));

        Assert.Equal(White.OpenMinutes, sets.OpenMinutes);
        Assert.Equal(White.ClampMinutes, sets.ClampMinutes);
        Assert.Equal(White.CureHours, sets.CureHours);
        Assert.False(sets.IsCool);
    }

    // [TenDegreeRule]: 10 °C warmer halves, 10 °C colder doubles.
    [Theory]
    [InlineData(31, 15, 30, 12)]
    [InlineData(11, 60, 120, 48)]
    public void Ten_degrees_halve_and_double(double celsius, int least, int most, int cureHours)
    {
        var sets = Assert.IsType<ClampTime.Sets>(ClampTime.At(White, celsius));

        Assert.Equal(new Band(least, most), sets.ClampMinutes);
        Assert.Equal(new Band(cureHours, cureHours), sets.CureHours);
    }

    [Fact]
    public void Open_time_is_never_rounded_up()
    {
        var sets = Assert.IsType<ClampTime.Sets>(ClampTime.At(White, 31));

        // Half of 3 and 10.
        Assert.Equal(new Band(1, 5), sets.OpenMinutes);
    }

    [Theory]
    [InlineData(9.9)]
    [InlineData(-20)]
    public void Below_the_least_minimum_it_is_too_cold(double celsius) => Assert.Equal(new ClampTime.TooCold(10), ClampTime.At(White, celsius));

    [Theory]
    [InlineData(10, true)]
    [InlineData(15.9, true)]
    [InlineData(16, false)]
    public void Between_the_minima_it_is_cool(double celsius, bool cool) => Assert.Equal(cool, Assert.IsType<ClampTime.Sets>(ClampTime.At(White, celsius)).IsCool);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Only_a_finite_temperature_is_one(double celsius) => Assert.Throws<ArgumentOutOfRangeException>(() => ClampTime.At(White, celsius));

    [Fact]
    public void Warmer_is_never_slower() =>
        Gen.Select(Gen.Int[0, GlueTable.All.Length - 1], Gen.Double[-40, 60], Gen.Double[0, 40]).Sample((at, celsius, warmer) =>
            (ClampTime.At(GlueTable.All[at], celsius), ClampTime.At(GlueTable.All[at], celsius + warmer)) switch
            {
                (ClampTime.TooCold, _) => true,
                (ClampTime.Sets cool, ClampTime.Sets warm) => warm.ClampMinutes.Most <= cool.ClampMinutes.Most && warm.OpenMinutes.Least <= cool.OpenMinutes.Least,
                _ => false,
            });
}
