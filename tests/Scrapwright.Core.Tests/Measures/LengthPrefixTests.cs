using CsCheck;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Tests.Measures;

public sealed class LengthPrefixTests
{
    [Theory]
    [InlineData("walnut 14 3/8 x 2 1/8", 7, "14 3/8", 115, 8, false)]
    [InlineData("14 3/8x2", 0, "14 3/8", 115, 8, false)]
    [InlineData("14 3/8 2 1/8 7/8", 0, "14 3/8", 115, 8, false)]
    [InlineData("14 2 7/8", 0, "14", 14, 1, false)]
    [InlineData("14inx2in", 0, "14in", 14, 1, true)]
    [InlineData("14in x 2in", 0, "14in", 14, 1, true)]
    [InlineData("14\"x2\"", 0, "14\"", 14, 1, true)]
    [InlineData("14 inlay", 0, "14", 14, 1, false)]
    [InlineData("14, 2, 1", 0, "14", 14, 1, false)]
    [InlineData("14,2,1", 0, "14", 14, 1, false)]
    [InlineData("14,5 x 2", 0, "14,5", 29, 2, false)]
    [InlineData("14. Then", 0, "14", 14, 1, false)]
    [InlineData("3 in. long", 0, "3 in.", 3, 1, true)]
    [InlineData("14 8/4 oak", 0, "14", 14, 1, false)]
    [InlineData("knot 4-5", 5, "4", 4, 1, false)]
    [InlineData("2' 3 x 1", 0, "2'", 24, 1, true)]
    [InlineData("2' 3\" x 1", 0, "2' 3\"", 27, 1, true)]
    [InlineData("1' 14\" 2\"", 0, "1'", 12, 1, true)]
    [InlineData("3rd", 0, "3", 3, 1, false)]
    [InlineData("say 14 \"best one\"", 4, "14", 14, 1, false)]
    public void TryReadPrefix_reads_the_longest_length(string text, int start, string read, long numerator, long denominator, bool unit)
    {
        var isRead = LengthParser.TryReadPrefix(text, start, LengthUnit.Inch, out var value, out var end, out var hadUnit);

        Assert.True(isRead);
        Assert.Equal(read, text[start..end]);
        Assert.Equal(Length.FromInches(numerator, denominator), value);
        Assert.Equal(unit, hadUnit);
    }

    [Theory]
    [InlineData("walnut", 0)]
    [InlineData("14", 2)]
    [InlineData("-3", 0)]
    [InlineData("3/0 x 2", 0)]
    [InlineData("1.2.3", 0)]
    [InlineData("1,200 mm", 0)]
    public void TryReadPrefix_reads_no_part_of_a_malformed_number(string text, int start)
    {
        Assert.False(LengthParser.TryReadPrefix(text, start, LengthUnit.Inch, out var value, out var end, out var hadUnit));
        Assert.Equal((Length.Zero, start, false), (value, end, hadUnit));
    }

    [Fact]
    public void TryReadPrefix_refuses_a_start_outside_the_text() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LengthParser.TryReadPrefix("14", 3, LengthUnit.Inch, out _, out _, out _));

    [Fact]
    public void Both_ways_of_reading_agree_on_what_the_prefix_took() =>
        Gen.Char["0123456789/.,-'\" inftmcx¾"].Array[1, 16].Select(chars => new string(chars)).Sample(text =>
            !LengthParser.TryReadPrefix(text, 0, LengthUnit.Millimetre, out var value, out var end, out _)
            || LengthParser.Parse(text[..end], LengthUnit.Millimetre).Value == value, iter: 20_000);
}
