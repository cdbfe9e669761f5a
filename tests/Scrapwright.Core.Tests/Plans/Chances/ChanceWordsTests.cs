using System.Globalization;
using System.Text.RegularExpressions;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans.Chances;
using Scrapwright.Core.Sheets;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Plans.Chances;

public sealed class ChanceWordsTests
{
    [Theory]
    [InlineData(953, "19 times in 20 (95.3 %)")]
    [InlineData(1000, "nearly always (over 99.9 %)")]
    [InlineData(999, "999 times in 1000 (99.9 %)")]
    [InlineData(499, "less than 1 time in 2 (49.9 %)")]
    public void Odds_come_with_their_number(int perMille, string words) => Assert.Equal(words, ChanceWords.Both(perMille));

    [Fact]
    public void Odds_are_never_better_than_the_chance()
    {
        for (var perMille = 500; perMille < 1000; perMille++)
        {
            var numbers = Regex.Matches(ChanceWords.Odds(perMille), @"\d+").Select(m => int.Parse(m.Value, CultureInfo.InvariantCulture)).ToArray();
            Assert.True(numbers[0] * 1000 <= perMille * numbers[1], ChanceWords.Both(perMille));
        }
    }

    [Fact]
    public void The_plot_says_in_words_what_it_shows()
    {
        var panel = new PanelChance("G1", new SizeChances(0.953, 1, 1), Length.FromInches(65, 16), Length.FromInches(3, 80), Length.FromInches(1, 40), Length.FromInches(4));

        var drawing = WidthPlot.Draw(panel, new Shop());

        Assert.Equal("G1 needs 4 in of width. It lands at 4 1/16 in on average, 19 times in 20 between 4 in and 4 1/8 in. It is wide enough 19 times in 20 (95.3 %).", drawing.Summary.Replace('\u00a0', ' ').Replace('\u2060', ' '));
        Assert.Contains(drawing.AllMarks, m => m is Mark.Line { Ink.Dashed: true });
        Assert.Contains(drawing.AllMarks, m => m is Mark.Hatch);
        Assert.All(drawing.AllMarks, m => Assert.True(m.Bounds.LeftMm >= -0.01 && m.Bounds.RightMm <= drawing.WidthMm + 0.01 && m.Bounds.TopMm >= -0.01 && m.Bounds.BottomMm <= drawing.HeightMm + 0.01));
    }

    // Every plot stays inside its drawing and off the eye's colours, however near or far the needed width lies.
    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    [InlineData(40)]
    public void The_plot_stays_inside_its_drawing(int overMm)
    {
        var panel = new PanelChance("G2", new SizeChances(0.5, 1, 1), Length.FromMillimetres(100 + overMm), Length.FromMicrometres(900), Length.FromMicrometres(500), Length.FromMillimetres(100));

        var drawing = WidthPlot.Draw(panel, new Shop { Unit = LengthUnit.Millimetre }, 60, 22);

        Assert.All(drawing.AllMarks, m => Assert.True(m.Bounds.LeftMm >= -0.01 && m.Bounds.RightMm <= 60.01 && m.Bounds.TopMm >= -0.01 && m.Bounds.BottomMm <= 22.01, $"{m}"));
    }
}
