using System.Text.Json;
using CsCheck;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Tests.Measures;

public sealed class LengthTests
{
    private static readonly Gen<Length> AnyLength = Gen.Long[-4_000_000_000_000_000, 4_000_000_000_000_000].Select(Length.FromPicometres);

    [Fact]
    public void Units_agree()
    {
        Assert.Equal(Length.FromMicrometres(25_400), Length.FromInches(1));
        Assert.Equal(Length.FromInches(12), Length.FromFeet(1));
        Assert.Equal(Length.FromMicrometres(1000), Length.FromMillimetres(1));
        Assert.Equal(Length.Zero, default);
        Assert.Equal(9.525, Length.FromInches(3, 8).Millimetres);
        Assert.Equal(0.375, Length.FromInches(3, 8).Inches);
    }

    [Fact]
    public void A_third_of_an_inch_is_refused_but_a_hundred_and_twenty_seventh_is_exact()
    {
        Assert.Throws<ArgumentException>(() => Length.FromInches(1, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromInches(1, 0));
        Assert.Equal(200_000_000, Length.FromInches(1, 127).Picometres);
    }

    [Fact]
    public void Arithmetic_beyond_the_range_throws()
    {
        Assert.Throws<OverflowException>(() => Length.FromMillimetres(long.MaxValue));
        Assert.Throws<OverflowException>(() => Length.FromPicometres(long.MaxValue) + Length.FromPicometres(1));
        Assert.Throws<OverflowException>(() => Length.FromPicometres(long.MaxValue) * 2);
        Assert.Throws<OverflowException>(() => -Length.FromPicometres(long.MinValue));
        Assert.Throws<OverflowException>(() => Length.FromPicometres(long.MaxValue).RoundTo(Length.FromMillimetres(1), Rounding.Up));
    }

    [Theory]
    [InlineData(7, 2, Rounding.Down, 3)]
    [InlineData(7, 2, Rounding.Up, 4)]
    [InlineData(7, 2, Rounding.Nearest, 4)]
    [InlineData(-7, 2, Rounding.Down, -4)]
    [InlineData(-7, 2, Rounding.Up, -3)]
    [InlineData(-7, 2, Rounding.Nearest, -4)]
    [InlineData(-5, 3, Rounding.Nearest, -2)]
    [InlineData(-4, 3, Rounding.Nearest, -1)]
    [InlineData(6, 2, Rounding.Up, 3)]
    [InlineData(-6, 2, Rounding.Down, -3)]
    public void Divide_rounds_as_asked(long picometres, long divisor, Rounding rounding, long expected) =>
        Assert.Equal(expected, Length.FromPicometres(picometres).Divide(divisor, rounding).Picometres);

    [Theory]
    [InlineData(0.1, Rounding.Down, 100_000_000)]
    [InlineData(9.525, Rounding.Down, 9_525_000_000)]
    [InlineData(9.525, Rounding.Up, 9_525_000_000)]
    [InlineData(0.0000000005, Rounding.Nearest, 1)]
    [InlineData(-0.0000000005, Rounding.Nearest, -1)]
    [InlineData(-0.0000000005, Rounding.Up, 0)]
    [InlineData(-0.0000000005, Rounding.Down, -1)]
    public void FromMillimetresRounded_takes_the_written_decimal(double millimetres, Rounding rounding, long picometres) =>
        Assert.Equal(picometres, Length.FromMillimetresRounded(millimetres, rounding).Picometres);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e10)]
    public void FromMillimetresRounded_refuses_what_is_no_length(double millimetres) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromMillimetresRounded(millimetres));

    // Common practice, no source: crosscut yield is floor((L + k) / (p + k)).
    [Theory]
    [InlineData(68, 4)]
    [InlineData(65, 3)]
    public void CountOf_gives_the_crosscut_yield(long quarterInches, long expected)
    {
        var kerf = Length.FromInches(1, 8);

        var count = (Length.FromInches(quarterInches, 4) + kerf).CountOf(Length.FromInches(4) + kerf);

        Assert.Equal(expected, count);
    }

    [Fact]
    public void Adding_and_taking_away_gives_the_same_length() =>
        Gen.Select(AnyLength, AnyLength).Sample((a, b) => a + b - b == a && a - b == -(b - a));

    [Fact]
    public void Split_adds_up_and_parts_differ_by_a_picometre_at_most() =>
        Gen.Select(AnyLength, Gen.Int[1, 50]).Sample((whole, n) =>
        {
            var parts = whole.Split(n);
            return parts.Length == n && Length.Sum(parts) == whole && parts.Max() - parts.Min() <= Length.FromPicometres(1);
        });

    [Fact]
    public void RoundTo_lands_on_a_mark_on_the_asked_side() =>
        Gen.Select(AnyLength, Gen.Int[0, 9]).Sample((length, power) =>
        {
            var step = Length.FromInches(1, 1 << power);
            var down = length.RoundTo(step, Rounding.Down);
            var up = length.RoundTo(step, Rounding.Up);
            var nearest = length.RoundTo(step, Rounding.Nearest);
            return down.Picometres % step.Picometres == 0 && down <= length && up >= length && up - down <= step
                && (nearest - length).Abs() * 2 <= step && (nearest == down || nearest == up);
        });

    [Fact]
    public void CountOf_is_the_floor() =>
        Gen.Select(AnyLength, Gen.Long[1, 1_000_000_000_000].Select(Length.FromPicometres)).Sample((whole, part) =>
        {
            var rest = whole - part * whole.CountOf(part);
            return rest >= Length.Zero && rest < part;
        });

    [Fact]
    public void Order_is_the_order_of_picometres() =>
        Gen.Select(AnyLength, AnyLength).Sample((a, b) =>
            Math.Sign(a.CompareTo(b)) == Math.Sign(a.Picometres.CompareTo(b.Picometres))
            && (a < b) == (b > a) && (a <= b) == !(a > b) && Length.Min(a, b) <= Length.Max(a, b) && Length.Min(a, b) + Length.Max(a, b) == a + b);

    [Fact]
    public void Json_keeps_every_picometre() =>
        Gen.Long.Select(Length.FromPicometres).Sample(length =>
            JsonSerializer.Deserialize<Length>(JsonSerializer.Serialize(length)) == length);
}
