using CsCheck;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Tests.Measures;

public sealed class LengthFormatterTests
{
    private static readonly LengthStyle Feet = new() { Feet = true };
    private static readonly Gen<Length> AnyLength = Gen.Long[-40_000_000_000_000, 40_000_000_000_000].Select(Length.FromPicometres);
    private static readonly Gen<LengthStyle> AnyStyle =
        Gen.Select(Gen.Int[1, 7], Gen.Int[0, 3], Gen.Enum<LengthUnit>(), Gen.Enum<Rounding>(), Gen.Bool, (power, decimals, unit, rounding, feet) =>
            new LengthStyle { Denominator = 1 << power, Decimals = decimals, Unit = unit, Rounding = rounding, Feet = feet });

    [Theory]
    [InlineData(88, "1 3/8 in")]
    [InlineData(24, "3/8 in")]
    [InlineData(128, "2 in")]
    [InlineData(0, "0 in")]
    [InlineData(1, "1/64 in")]
    [InlineData(-88, "-1 3/8 in")]
    [InlineData(-24, "-3/8 in")]
    public void Inches_are_reduced_fractions(long sixtyFourths, string text) =>
        Assert.Equal(text, Length.FromInches(sixtyFourths, 64).ToText(LengthStyle.Inches));

    [Theory]
    [InlineData(639, 640, 64, Rounding.Nearest, "≈ 1 in")]
    [InlineData(639, 640, 64, Rounding.Down, "≈ 63/64 in")]
    [InlineData(639, 640, 64, Rounding.Up, "≈ 1 in")]
    [InlineData(-639, 640, 64, Rounding.Nearest, "≈ -1 in")]
    [InlineData(-639, 640, 64, Rounding.Down, "≈ -1 in")]
    [InlineData(-639, 640, 64, Rounding.Up, "≈ -63/64 in")]
    [InlineData(5, 16, 8, Rounding.Nearest, "≈ 3/8 in")]
    [InlineData(5, 16, 16, Rounding.Nearest, "5/16 in")]
    [InlineData(-1, 512, 2, Rounding.Nearest, "≈ 0 in")]
    public void A_carry_goes_into_the_inch_and_the_sign_stays(long numerator, long denominator, int finest, Rounding rounding, string text) =>
        Assert.Equal(text, Length.FromInches(numerator, denominator).ToText(new() { Denominator = finest, Rounding = rounding }));

    [Theory]
    [InlineData(115, 8, "1 ft 2 3/8 in")]
    [InlineData(99, 8, "1 ft 3/8 in")]
    [InlineData(12, 1, "1 ft")]
    [InlineData(-18, 1, "-1 ft 6 in")]
    [InlineData(11, 1, "11 in")]
    [InlineData(12287, 1024 / 2, "≈ 2 ft")]
    public void Feet_leave_less_than_twelve_inches(long numerator, long denominator, string text) =>
        Assert.Equal(text, Length.FromInches(numerator, denominator).ToText(Feet));

    [Theory]
    [InlineData(9_525, 1, Rounding.Nearest, "≈ 9.5 mm")]
    [InlineData(9_500, 1, Rounding.Nearest, "9.5 mm")]
    [InlineData(9_000, 3, Rounding.Nearest, "9 mm")]
    [InlineData(9_525, 3, Rounding.Nearest, "9.525 mm")]
    [InlineData(9_525, 2, Rounding.Nearest, "≈ 9.53 mm")]
    [InlineData(-9_525, 2, Rounding.Nearest, "≈ -9.53 mm")]
    [InlineData(-9_525, 2, Rounding.Up, "≈ -9.52 mm")]
    [InlineData(-20, 1, Rounding.Nearest, "≈ 0 mm")]
    [InlineData(9_999, 0, Rounding.Down, "≈ 9 mm")]
    public void Millimetres_have_the_asked_decimals(long micrometres, int decimals, Rounding rounding, string text) =>
        Assert.Equal(text, Length.FromMicrometres(micrometres).ToText(LengthStyle.Millimetres with { Decimals = decimals, Rounding = rounding }));

    [Fact]
    public void The_mark_and_the_unit_can_be_left_out()
    {
        Assert.Equal("14 3/8 in", Length.FromMillimetres(365).ToText(LengthStyle.Inches with { Approximate = false }));
        Assert.Equal("≈ 14 3/8", LengthFormatter.FormatNumber(Length.FromMillimetres(365), LengthStyle.Inches));
        Assert.Equal("14 3/8", LengthFormatter.FormatNumber(Length.FromInches(115, 8), Feet));
    }

    [Fact]
    public void A_style_refuses_what_no_tape_has()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new LengthStyle { Denominator = 10 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new LengthStyle { Denominator = 1 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new LengthStyle { Denominator = 256 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new LengthStyle { Decimals = 4 });
    }

    [Fact]
    public void Reading_back_what_is_shown_gives_the_mark_it_stands_for() =>
        Gen.Select(AnyLength, AnyStyle).Sample((length, style) =>
        {
            var step = style.Unit == LengthUnit.Inch
                ? Length.FromInches(1, style.Denominator)
                : Length.FromMicrometres(style.Decimals switch { 0 => 1000, 1 => 100, 2 => 10, _ => 1 });
            var mark = length.RoundTo(step, style.Rounding);
            var text = length.ToText(style);
            return text.StartsWith('≈') == (mark != length)
                && LengthParser.ParseWithUnit(text.TrimStart('≈'), allowNegative: true).Value == mark
                && mark.ToText(style) == text.TrimStart('≈', ' ');
        }, iter: 20_000);

    [Fact]
    public void Exact_text_is_read_back_to_the_same_picometre() =>
        Gen.Select(Gen.OneOf(AnyLength, Gen.Long[-long.MaxValue, long.MaxValue].Select(Length.FromPicometres)), Gen.Enum<LengthUnit>()).Sample((length, unit) =>
            Length.Parse(length.ToExactText(unit)) == length && Length.Parse(length.ToString()) == length, iter: 20_000);

    [Theory]
    [InlineData(49_609_375, "1/512 in", "0.049609375 mm")]
    [InlineData(2_540_000, "0.0001 in", "0.00254 mm")]
    [InlineData(1_000_000_000, "5/127 in", "1 mm")]
    [InlineData(1, "1/25400000000 in", "0.000000001 mm")]
    [InlineData(-34_925_000_000, "-1 3/8 in", "-34.925 mm")]
    public void Exact_text_keeps_everything(long picometres, string inches, string millimetres)
    {
        Assert.Equal(inches, Length.FromPicometres(picometres).ToExactText(LengthUnit.Inch));
        Assert.Equal(millimetres, Length.FromPicometres(picometres).ToExactText(LengthUnit.Millimetre));
    }

    [Fact]
    public void A_fraction_is_below_one_in_lowest_terms_and_keeps_the_sign() =>
        Gen.Select(AnyLength, Gen.Int[0, 9], Gen.Enum<Rounding>()).Sample((length, power, rounding) =>
        {
            var fraction = LengthFraction.Of(length, 1 << power, rounding);
            var shown = (Length.FromInches(fraction.Whole) + Length.FromInches(fraction.Numerator, fraction.Denominator)) * fraction.Sign;
            return shown == length.RoundTo(Length.FromInches(1, 1 << power), rounding)
                && fraction.Numerator >= 0 && fraction.Numerator < fraction.Denominator
                && (fraction.Numerator % 2 == 1 || fraction.Denominator == 1)
                && fraction.IsExact == (shown == length)
                && fraction.Sign * Math.Sign(length.Picometres) >= 0
                && (fraction.Sign != 0 || shown.IsZero);
        });
}
