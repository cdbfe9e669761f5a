using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Core.Tests.Pile;

public sealed partial class EntryLineTests
{
    [Theory]
    [InlineData("", 1, EntryMessages.ASpecies)]
    [InlineData("walnut", 7, EntryMessages.ThreeSizes)]
    [InlineData("walnut 14 x 2", 8, EntryMessages.ThreeSizes)]
    [InlineData("14 x 2 x 7/8", 13, EntryMessages.ASpecies)]
    [InlineData("walnut 0 x 2 x 7/8", 8, EntryMessages.AboveZero)]
    [InlineData("walnut -14 x 2 x 7/8", 8, EntryMessages.AboveZero)]
    [InlineData("walnut 14 x -2 x 7/8", 13, EntryMessages.AboveZero)]
    [InlineData("walnut 14 x 2 x 7/0", 17, Messages.DenominatorAboveZero)]
    [InlineData("walnut 1,200 x 54 x 22 mm", 8, Messages.NoThousandsMark)]
    [InlineData("walnut 14 x 2 x 7/8, x0", 22, EntryMessages.ACount)]
    [InlineData("walnut 14 x 2 x 7/8, 5000 pcs", 22, EntryMessages.ACount)]
    [InlineData("walnut 14 x 2 x 7/8 frobnicated", 21, EntryMessages.AKnownWord)]
    [InlineData("walnut cherry 14 x 2 x 7/8", 8, EntryMessages.OneSpecies)]
    [InlineData("walnut 14 x 2 x 7/8 cupped", 21, EntryMessages.HowMuch)]
    [InlineData("walnut 14 x 2 x 7/8 knot", 21, EntryMessages.Where)]
    [InlineData("walnut 14 x 2 x 7/8 knot 14-15", 26, EntryMessages.WithinTheLength)]
    [InlineData("walnut 14 x 2 x 7/8 cup 1/8 cup 1/4", 29, EntryMessages.OnlyOnce)]
    [InlineData("walnut 14 x 2 x 7/8 x2 (3)", 22, EntryMessages.NoMoreSizes)]
    [InlineData("walnut 14 x 2 x 7/8, x2, 3 pcs", 26, EntryMessages.OnlyOnce)]
    [InlineData("walnut 14 x 2 x 7/8 flat", 21, EntryMessages.FlatSawn)]
    [InlineData("walnut 14 x 2 x 7/8 $", 21, EntryMessages.AKnownWord)]
    [InlineData("walnut 14 x 2 x 7/8 \U0001F333", 21, EntryMessages.AKnownWord)]
    [InlineData("walnut 14 x 2 x 7/8 x 9 x 5", 23, EntryMessages.NoMoreSizes)]
    [InlineData("walnut 14 x 2 x 7/8 #", 21, EntryMessages.ALabel)]
    [InlineData("walnut 14 x 2\0 x 7/8", 14, EntryMessages.PlainText)]
    [InlineData("walnut 14 x 2 x 7/8\nash", 20, EntryMessages.PlainText)]
    public void Parse_refuses_with_place_and_expectation(string line, int column, string expected)
    {
        var problems = NotUnderstood(line).Problems;

        Assert.Contains(problems, problem => problem.Column == column && problem.Expected == expected);
    }

    [Fact]
    public void Parse_reports_every_problem_in_order_and_keeps_what_it_understood()
    {
        var not = NotUnderstood("walnut 14 x 2 x 7/8 frob, knot, cupped, wibble");

        Assert.Equal([21, 27, 33, 41], not.Problems.Select(p => p.Column));
        Assert.Equal(["frob", "knot", "cupped", "wibble"], not.Problems.Select(p => p.Found));
        Assert.Contains(not.Readings, r => r.Part == EntryPart.Species);
    }

    [Fact]
    public void Parse_refuses_a_line_without_end_at_once()
    {
        var problem = Assert.Single(NotUnderstood(new string('w', 10_000_000)).Problems);

        Assert.Equal(EntryMessages.ShorterLine, problem.Expected);
    }

    [Fact]
    public void Problem_says_where_what_and_maybe_what_was_meant()
    {
        var problem = Assert.Single(NotUnderstood("wallnutt 14 x 2 x 7/8").Problems);

        Assert.StartsWith("Column 1: found “wallnutt”, expected a species", problem.Message, StringComparison.Ordinal);
        Assert.Contains("Maybe walnut", problem.Message, StringComparison.Ordinal);
    }
}
