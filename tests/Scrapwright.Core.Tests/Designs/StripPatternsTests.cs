using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Tests.Designs;

public sealed class StripPatternsTests
{
    [Theory]
    [InlineData(StripPattern.Mirrored, "WMW", true)]
    [InlineData(StripPattern.Mirrored, "WMCMW", true)]
    [InlineData(StripPattern.Mirrored, "WMWM", false)]
    [InlineData(StripPattern.Mirrored, "WMC", false)]
    [InlineData(StripPattern.Alternating, "WMWM", true)]
    [InlineData(StripPattern.Alternating, "WMW", true)]
    [InlineData(StripPattern.Alternating, "WMC", false)]
    [InlineData(StripPattern.Alternating, "WWWM", false)]
    [InlineData(StripPattern.Accent, "WWM", true)]
    [InlineData(StripPattern.Accent, "WM", false)]
    [InlineData(StripPattern.Accent, "WWMM", false)]
    [InlineData(StripPattern.Accent, "WWMC", false)]
    [InlineData(StripPattern.Free, "WWMC", true)]
    public void A_pattern_is_met_by_the_woods_alone(StripPattern pattern, string woods, bool expected) =>
        Assert.Equal(expected, StripPatterns.IsMet(pattern, woods.Select(w => ($"{w}", Length.FromInches(1))), Length.FromInches(4)));

    [Theory]
    [InlineData(new[] { 1, 0 }, true)]
    [InlineData(new[] { 3, 2, 1, 0 }, true)]
    [InlineData(new[] { 2, -1, 0 }, true)]
    [InlineData(new[] { 2, 3, 0, 1 }, false)]
    [InlineData(new[] { 1, 0, 3, 2 }, false)]
    [InlineData(new[] { 3, -1, -1, 0 }, false)]
    [InlineData(new[] { -1, 0, 1 }, false)]
    [InlineData(new[] { -1 }, false)]
    [InlineData(new int[0], false)]
    public void Book_matched_is_every_sister_at_the_same_place_on_the_other_side(int[] sisters, bool expected)
    {
        Assert.Equal(expected, StripPatterns.IsBookMatched([.. sisters]));
        Assert.Equal(expected, StripPatterns.IsMet(StripPattern.BookMatched, [], Length.FromInches(4), [.. sisters]));
    }

    [Fact]
    public void An_accent_wider_than_a_quarter_of_the_panel_is_none() =>
        Assert.False(StripPatterns.IsMet(
            StripPattern.Accent,
            [("W", Length.FromInches(2)), ("M", Length.FromInches(1) + Length.FromPicometres(1)), ("W", Length.FromInches(2))],
            Length.FromInches(4)));
}
