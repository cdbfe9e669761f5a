using CsCheck;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Tests.Measures;

public sealed class LengthParserTests
{
    [Theory]
    [InlineData("3/8", 3, 8)]
    [InlineData("1 3/8", 11, 8)]
    [InlineData("1-3/8\"", 11, 8)]
    [InlineData("14 3/8 in", 115, 8)]
    [InlineData("  14  3/8in.\t", 115, 8)]
    [InlineData("1' 2-3/8\"", 115, 8)]
    [InlineData("1'-2 3/8\"", 115, 8)]
    [InlineData("1'2-3/8''", 115, 8)]
    [InlineData("1' 3/8\"", 99, 8)]
    [InlineData("1' 6", 18, 1)]
    [InlineData("2 ft 3 in", 27, 1)]
    [InlineData("2ft3in", 27, 1)]
    [InlineData("2 feet 3 inches", 27, 1)]
    [InlineData("1 foot 1 inch", 13, 1)]
    [InlineData("1.5 FT", 18, 1)]
    [InlineData("½ ft.", 6, 1)]
    [InlineData(".75", 3, 4)]
    [InlineData("0,75", 3, 4)]
    [InlineData("0.125\"", 1, 8)]
    [InlineData("¾", 3, 4)]
    [InlineData("1¾\"", 7, 4)]
    [InlineData("1 ¾ in", 7, 4)]
    [InlineData("1-¾", 7, 4)]
    [InlineData("3⁄8", 3, 8)]
    [InlineData("1 3/8″", 11, 8)]
    [InlineData("1 3/8”", 11, 8)]
    [InlineData("1 3/8“", 11, 8)]
    [InlineData("1′ 2″", 14, 1)]
    [InlineData("1’ 2’’", 14, 1)]
    [InlineData("1‘ 2′′", 14, 1)]
    [InlineData("1 \"", 1, 1)]
    [InlineData("１４\u3000３／８＂", 115, 8)]
    [InlineData("１４ ｉｎ", 14, 1)]
    [InlineData("14\u00A03/8\u2009in", 115, 8)]
    [InlineData("14\u202F3/8", 115, 8)]
    [InlineData("4/4", 1, 1)]
    [InlineData("5/4", 5, 4)]
    [InlineData("8/4", 2, 1)]
    [InlineData("125 thou", 1, 8)]
    [InlineData("0", 0, 1)]
    [InlineData("007", 7, 1)]
    [InlineData("5/127 in", 5, 127)]
    [InlineData("0.37500000000000000000000000", 3, 8)]
    public void Parse_reads_inches_and_feet(string text, long numerator, long denominator) =>
        Assert.Equal(Length.FromInches(numerator, denominator), LengthParser.Parse(text, LengthUnit.Inch).Value);

    [Theory]
    [InlineData("36.5 cm", 365_000)]
    [InlineData("36,5 cm", 365_000)]
    [InlineData("36.5cm", 365_000)]
    [InlineData("9mm", 9_000)]
    [InlineData("9", 9_000)]
    [InlineData("9,5", 9_500)]
    [InlineData("９．５ｍｍ", 9_500)]
    [InlineData("1.2 m", 1_200_000)]
    [InlineData("1.2 M", 1_200_000)]
    [InlineData("2 metres", 2_000_000)]
    [InlineData("1 meter", 1_000_000)]
    [InlineData("3 Millimetres", 3_000)]
    [InlineData("3 millimeter", 3_000)]
    [InlineData("3 centimetres", 30_000)]
    [InlineData("3 centimeter", 30_000)]
    [InlineData("3 µm", 3)]
    [InlineData("3 μm", 3)]
    [InlineData("3um", 3)]
    [InlineData("1/2 mm", 500)]
    [InlineData("5/4", 31_750)]
    [InlineData("2½", 63_500)]
    [InlineData("1 in", 25_400)]
    public void Parse_reads_millimetres_but_bare_fractions_as_inches(string text, long micrometres) =>
        Assert.Equal(Length.FromMicrometres(micrometres), LengthParser.Parse(text, LengthUnit.Millimetre).Value);

    [Theory]
    [InlineData("-3/8", -3)]
    [InlineData("−3/8 in", -3)]
    [InlineData("- 1 1/8\"", -9)]
    [InlineData("-1' 1/8\"", -97)]
    public void Parse_reads_a_minus_sign_only_where_allowed(string text, long eighths)
    {
        Assert.Equal(Length.FromInches(eighths, 8), LengthParser.Parse(text, LengthUnit.Inch, allowNegative: true).Value);
        Assert.Equal(new ParseError(0, text[..1], Messages.LengthNotNegative), LengthParser.Parse(text, LengthUnit.Inch).Error);
    }

    [Theory]
    [InlineData("", 0, "", Messages.ALength)]
    [InlineData("  ", 2, "", Messages.ALength)]
    [InlineData("walnut", 0, "walnut", Messages.ALength)]
    [InlineData(" \0", 1, "U+0000", Messages.ALength)]
    [InlineData("\"", 0, "\"", Messages.ALength)]
    [InlineData("/8", 0, "/", Messages.ALength)]
    [InlineData("+3", 0, "+", Messages.ALength)]
    [InlineData(",75", 0, ",", Messages.ALength)]
    [InlineData("😀", 0, "😀", Messages.ALength)]
    [InlineData("NaN", 0, "NaN", Messages.ALength)]
    [InlineData("3/", 2, "", Messages.ADenominator)]
    [InlineData("3/x", 2, "x", Messages.ADenominator)]
    [InlineData("14 3/ 8", 5, " ", Messages.ADenominator)]
    [InlineData("3/0", 2, "0", Messages.DenominatorAboveZero)]
    [InlineData("14 3/00 in", 5, "00", Messages.DenominatorAboveZero)]
    [InlineData("1 9/8", 2, "9", Messages.FractionBelowOne)]
    [InlineData("1 8/8 in", 2, "8", Messages.FractionBelowOne)]
    [InlineData("3/8/2", 3, "/", Messages.NumberEnd)]
    [InlineData("1.2.3", 3, ".", Messages.NumberEnd)]
    [InlineData("1.5/8", 3, "/", Messages.NumberEnd)]
    [InlineData("¾/2", 1, "/", Messages.NumberEnd)]
    [InlineData("1,200", 1, ",", Messages.NoThousandsMark)]
    [InlineData("12,000 mm", 2, ",", Messages.NoThousandsMark)]
    [InlineData("1/3", 0, "1", Messages.WholePicometres)]
    [InlineData("2 1/3 in", 0, "2", Messages.WholePicometres)]
    [InlineData("1/1024", 0, "1", Messages.WholePicometres)]
    [InlineData("⅓", 0, "⅓", Messages.WholePicometres)]
    [InlineData("1' 1/3\"", 3, "1", Messages.WholePicometres)]
    [InlineData("0.0000000001 mm", 0, "0", Messages.WholePicometres)]
    [InlineData("0.0000000000000000000000001", 2, "00000000000000000000", Messages.WholePicometres)]
    [InlineData("9223373 m", 0, "9223373", Messages.LengthInRange)]
    [InlineData("99999999999999999999999", 0, "99999999999999999999", Messages.LengthInRange)]
    [InlineData("3/99999999999999999999", 2, "99999999999999999999", Messages.LengthInRange)]
    [InlineData("14 furlongs", 3, "furlongs", Messages.AUnitOrTheEnd)]
    [InlineData("14 inlay", 3, "inlay", Messages.AUnitOrTheEnd)]
    [InlineData("4m2", 1, "m2", Messages.AUnitOrTheEnd)]
    [InlineData("14 3", 3, "3", Messages.AUnitOrTheEnd)]
    [InlineData("14-", 2, "-", Messages.AUnitOrTheEnd)]
    [InlineData("4-5", 1, "-", Messages.AUnitOrTheEnd)]
    [InlineData("14\t3/8", 3, "3", Messages.AUnitOrTheEnd)]
    [InlineData("14,2,1", 2, ",", Messages.AUnitOrTheEnd)]
    [InlineData("14,3/8", 2, ",", Messages.AUnitOrTheEnd)]
    [InlineData("1e3", 1, "e3", Messages.AUnitOrTheEnd)]
    [InlineData("3\0", 1, "U+0000", Messages.AUnitOrTheEnd)]
    [InlineData("14\" 3/8", 4, "3", Messages.TheEnd)]
    [InlineData("9mm mm", 4, "mm", Messages.TheEnd)]
    [InlineData("9mmx20mm", 3, "x20mm", Messages.TheEnd)]
    [InlineData("1' 14\"", 3, "14", Messages.InchesBelowTwelve)]
    [InlineData("1' 12\"", 3, "12", Messages.InchesBelowTwelve)]
    [InlineData("1' 2 mm", 5, "mm", Messages.AnInchMark)]
    [InlineData("1' 2 x", 5, "x", Messages.AnInchMark)]
    [InlineData("1' 2'", 4, "'", Messages.AnInchMark)]
    [InlineData("1.5' 3\"", 5, "3", Messages.TheEnd)]
    public void Parse_refuses_the_rest_and_says_where_and_why(string text, int position, string found, string expected) =>
        Assert.Equal(new ParseError(position, found, expected), LengthParser.Parse(text, LengthUnit.Inch).Error);

    [Fact]
    public void The_message_counts_from_one()
    {
        Assert.Equal(
            "At character 3: found “0”, expected a lower number above zero.",
            LengthParser.Parse("3/0", LengthUnit.Inch).Error.Message);
        Assert.StartsWith("At character 1 the text ends", LengthParser.Parse("", LengthUnit.Inch).Error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ParseWithUnit_refuses_a_bare_number()
    {
        Assert.Equal(new ParseError(2, "", Messages.AUnit), LengthParser.ParseWithUnit("14").Error);
        Assert.Equal(Length.FromInches(14), LengthParser.ParseWithUnit("14 in").Value);
    }

    [Fact]
    public void Length_Parse_is_the_parser_with_a_unit()
    {
        Assert.Equal(Length.FromInches(-11, 8), Length.Parse("-1 3/8 in"));
        Assert.False(Length.TryParse("1 3/8", null, out _));
        Assert.False(Length.TryParse((string?)null, null, out _));
        Assert.Equal(LengthParser.ParseWithUnit("3/0 in").Error.Message, Assert.Throws<FormatException>(() => Length.Parse("3/0 in")).Message);
    }

    [Fact]
    public void Any_text_is_read_or_refused_within_its_bounds() =>
        Gen.OneOf(Gen.String, Gen.Char["0123456789/.,-'\" inftmcxµ¾⅓⁄１\0"].Array[0, 24].Select(chars => new string(chars))).Sample(text =>
        {
            var result = LengthParser.Parse(text, LengthUnit.Inch, allowNegative: true);
            return result.IsOk || (result.Error.Position >= 0 && result.Error.Position <= text.Length
                && (result.Error.Found.Length == 0) == (result.Error.Position == text.Length));
        }, iter: 20_000);

    [Fact]
    public void Megabytes_of_digits_are_refused() => Assert.False(LengthParser.Parse(new string('9', 10_000_000), LengthUnit.Inch).IsOk);
}
