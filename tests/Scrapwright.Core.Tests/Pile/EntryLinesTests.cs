using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Core.Tests.Pile;

public sealed class EntryLinesTests
{
    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Forty_lines_give_forty_offcuts(string lineEnd)
    {
        var text = string.Join(lineEnd, Enumerable.Range(0, 40).Select(i => $"{(i % 2 == 0 ? "walnut" : "hard maple")} {10 + i} x 2 x 7/8"));

        var outcome = Assert.IsType<EntryLinesOutcome.AllUnderstood>(EntryLines.Parse(text, LengthUnit.Inch, []));

        Assert.Equal(Enumerable.Range(10, 40).Select(i => Length.FromInches(i)), outcome.Offcuts.Select(o => o.Length));
        Assert.Equal(40, outcome.Offcuts.Select(o => o.Label).Distinct().Count());
        Assert.Equal(["W1", "HM1", "W2", "HM2"], outcome.Offcuts.Take(4).Select(o => o.Label));
    }

    [Fact]
    public void A_line_not_understood_costs_no_other_line()
    {
        const string Text = "\uFEFFwalnut 14 x 2 x 7/8\n\n// from the shed\n  frob 14 x 2 x 7/8\nash 9 x 1 x 1\nash 9 x";

        var outcome = Assert.IsType<EntryLinesOutcome.SomeNotUnderstood>(EntryLines.Parse(Text, LengthUnit.Inch, []));

        Assert.Equal([1, 5], outcome.Lines.Select(l => l.Line));
        Assert.Equal([(4, "  frob 14 x 2 x 7/8"), (6, "ash 9 x")], outcome.Refused.Select(l => (l.Line, l.Text)));
        Assert.Equal((3, "frob"), (outcome.Refused[0].Problems[0].Column, outcome.Refused[0].Problems[0].Found));
    }

    [Fact]
    public void Labels_given_avoid_those_in_the_pile_and_those_further_down()
    {
        const string Text = "walnut 14 x 2 x 7/8\nwalnut 14 x 2 x 7/8\nW2: walnut 14 x 2 x 7/8";

        var outcome = Assert.IsType<EntryLinesOutcome.AllUnderstood>(EntryLines.Parse(Text, LengthUnit.Inch, ["w1"]));

        Assert.Equal(["W3", "W4", "W2"], outcome.Offcuts.Select(o => o.Label));
    }

    [Theory]
    [InlineData("W1: ash 9 x 2 x 1\nW1: ash 9 x 2 x 1", 2)]
    [InlineData("W1: ash 9 x 2 x 1\nw1: ash 9 x 2 x 1", 2)]
    [InlineData("W1: ash 9 x 2 x 1 x3\n\nW1b: ash 9 x 2 x 1", 3)]
    [InlineData("P5: ash 9 x 2 x 1", 1)]
    public void A_label_that_is_taken_is_refused(string text, int line)
    {
        var outcome = Assert.IsType<EntryLinesOutcome.SomeNotUnderstood>(EntryLines.Parse(text, LengthUnit.Inch, ["P5"]));

        var refused = Assert.Single(outcome.Refused);
        Assert.Equal(line, refused.Line);
        Assert.Equal(EntryMessages.AFreeLabel, refused.Problems[0].Expected);
    }

    [Fact]
    public void A_huge_paste_ends_early_and_says_so()
    {
        var text = string.Join('\n', Enumerable.Repeat("garbage ~~~ 1/0 x", 200_000));

        var outcome = Assert.IsType<EntryLinesOutcome.SomeNotUnderstood>(EntryLines.Parse(text, LengthUnit.Inch, []));

        Assert.Equal(EntryLines.MostLines + 1, outcome.Refused.Length);
        Assert.Contains("at most", outcome.Refused[^1].Problems[0].Expected, StringComparison.Ordinal);
    }
}
