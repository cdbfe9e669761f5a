using Scrapwright.Core.Finishing;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Sheets;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Plans;

namespace Scrapwright.Core.Tests.Sheets;

public sealed class FinishingOnSheetsTests
{
    public static TheoryData<string, string> Kinds =>
    [
        .. GlueTable.All.Select(g => g.Key).Append("what was in the cupboard when we moved in").SelectMany(
            glue => FinishTable.All.Select(f => f.Key).Append("the blue tin of the neighbour").Select(finish => new TheoryDataRow<string, string>(glue, finish))),
    ];

    public static TheoryData<string> Finishes => [.. FinishTable.All.Select(f => f.Key)];

    private static Plan Squares(Shop shop) => ExamplePlans.Squares with { Request = ExamplePlans.Squares.Request with { Shop = shop } };

    private static string Text(Plan plan) =>
        string.Join(" ", BenchSheets.For(plan, PaperSize.Letter).SelectMany(s => s.AllMarks).OfType<Mark.Text>().Select(t => t.Letters));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Sheets_with_any_glue_and_finish_stay_inside_and_keep_their_texts_apart(string glue, string finish)
    {
        foreach (var unit in new[] { LengthUnit.Inch, LengthUnit.Millimetre })
        {
            foreach (var sheet in BenchSheets.For(Squares(new Shop { Glue = glue, Finish = finish, Unit = unit }), PaperSize.A4))
            {
                SheetRules.AssertInsideMargins(sheet);
                SheetRules.AssertNoTextOverlaps(sheet.Title, sheet.AllMarks);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Finishes))]
    public void Oily_rags_are_on_the_sheets_of_every_drying_oil_and_of_no_other_finish(string finish) =>
        Assert.Equal(FinishTable.Find(finish)!.IsDryingOil, Text(Squares(new Shop { Finish = finish })).Contains("Oily rags catch fire", StringComparison.Ordinal));

    [Fact]
    public void A_finish_that_is_not_known_brings_the_rags_all_the_same() =>
        Assert.Contains("oily rags catch fire", Text(Squares(new Shop { Finish = "the blue tin" })), StringComparison.Ordinal);

    [Fact]
    public void Sheets_name_the_grits_the_pressure_and_what_is_used_up()
    {
        var text = Text(Squares(new Shop()));

        Assert.Contains("P120, P150, P220", text, StringComparison.Ordinal);
        // Walnut is medium, maple high: 125 to 300 psi.
        Assert.Contains("125–300 psi", text, StringComparison.Ordinal);
        Assert.Contains("Used up: check what is left in the shop", text, StringComparison.Ordinal);
        Assert.Contains("1 × P120, 1 × P150, 1 × P220", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shop_without_a_grit_is_told_which_to_buy() =>
        Assert.Contains("Grit to buy first: P150.", Text(Squares(new Shop { Abrasives = new Abrasives { Grits = ["P120", "P220"] } })), StringComparison.Ordinal);
}
