using Scrapwright.Core.Finishing;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Sheets;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Plans;

namespace Scrapwright.Core.Tests.Sheets;

public sealed class FacedSheetTests
{
    private static Plan Plan => ExamplePlans.Faced;

    private static string Text(Plan plan) =>
        string.Join(" ", BenchSheets.For(plan, PaperSize.Letter).SelectMany(s => s.AllMarks).OfType<Mark.Text>().Select(t => t.Letters));

    [Fact]
    public void The_sheets_say_which_faces_to_joint_and_what_to_glue_to_what()
    {
        var text = Text(Plan);

        Assert.Contains("Glue face to face · T1+T2", text, StringComparison.Ordinal);
        Assert.Contains("the lower face of T1, the upper face of T2", text, StringComparison.Ordinal);
        Assert.Contains("T1 on T2, flat faces together", text, StringComparison.Ordinal);
        Assert.Contains("Write T1+T2 on it", text, StringComparison.Ordinal);
        Assert.Contains("Board T1+T2", string.Join(" ", BenchSheets.For(Plan, PaperSize.Letter).SelectMany(s => s.Marks).OfType<Mark.Group>().Select(g => g.Name)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(LengthUnit.Inch)]
    [InlineData(LengthUnit.Millimetre)]
    public void Its_sheets_stay_inside_and_keep_their_texts_apart(LengthUnit unit)
    {
        var plan = Plan with { Request = Plan.Request with { Shop = Plan.Request.Shop with { Unit = unit } } };
        foreach (var sheet in new[] { PaperSize.A4, PaperSize.Letter }.SelectMany(paper => BenchSheets.For(plan, paper).Concat(StripLabels.For(plan, paper))))
        {
            SheetRules.AssertInsideMargins(sheet);
            SheetRules.AssertNoTextOverlaps(sheet.Title, sheet.AllMarks);
        }
    }

    [Fact]
    public void Labels_bear_the_name_of_the_board() =>
        Assert.Contains("T1+T2", StripLabels.For(Plan, PaperSize.Letter).SelectMany(s => s.AllMarks).OfType<Mark.Text>().Select(t => t.Letters));

    [Fact]
    public void The_whole_face_is_glued()
    {
        // 10 × 1 3/8 in.
        Assert.Equal(13.75 * 25.4 * 25.4, FaceGlueAdvice.GlueArea(Plan.Faced[0]).SquareMillimetres, 6);
        Assert.Contains(FaceGlueAdvice.Facts(Plan, Plan.Faced[0]), f => f.Name == "Glue" && f.Text.EndsWith("over the whole face, 14 in²", StringComparison.Ordinal));
        Assert.Contains("1 board face to face", Consumables.For(Plan)[0].Why, StringComparison.Ordinal);
        Assert.Contains(FaceGlueAdvice.Facts(Plan with { Request = Plan.Request with { Shop = new Shop { Glue = "hide" } } }, Plan.Faced[0]), f => f.Text.Contains("its label says how much", StringComparison.Ordinal));
    }

    [Fact]
    public void A_shop_written_down_before_has_the_time_of_its_glue_ups_for_it()
    {
        var shop = new Shop { Times = [.. new Shop().Times.Where(t => t.Operation is not (Operation.FaceGlue or Operation.GlueUp)), new(Operation.GlueUp, 7, 3, 45)] };

        Assert.Equal((10, 45), (WorkContent.HandsOnMinutes(Operation.FaceGlue, 1, shop), WorkContent.WaitMinutes(Operation.FaceGlue, shop)));
    }

    [Fact]
    public void Changes_name_the_two_offcuts() =>
        Assert.Contains(PlanChanges.Between(ExamplePlans.Squares, Plan), c => c.Text == "offcuts T1 and T2 are glued face to face now");
}
