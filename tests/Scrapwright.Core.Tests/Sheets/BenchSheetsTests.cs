using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Sheets;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Sheets;

public sealed class BenchSheetsTests
{
    public static TheoryData<string, LengthUnit> PapersAndUnits => new()
    {
        { "Letter", LengthUnit.Inch }, { "Letter", LengthUnit.Millimetre }, { "A4", LengthUnit.Inch }, { "A4", LengthUnit.Millimetre },
    };

    private static PaperSize Paper(string name) => name == "A4" ? PaperSize.A4 : PaperSize.Letter;

    [Theory]
    [MemberData(nameof(PapersAndUnits))]
    public void Everything_stays_inside_the_margins_and_no_texts_overlap(string paper, LengthUnit unit)
    {
        var (plan, designs) = SamplePlan.Build(new Shop { Unit = unit });

        var sheets = BenchSheets.For(plan, designs, Paper(paper)).AddRange(StripLabels.For(plan, Paper(paper)));

        foreach (var sheet in sheets)
        {
            SheetRules.AssertInsideMargins(sheet);
            SheetRules.AssertNoTextOverlaps(sheet.Title, sheet.AllMarks);
            SheetRules.AssertWellFormed(SvgWriter.Write(sheet), sheet.Paper.WidthMm, sheet.Paper.HeightMm);
        }
    }

    [Fact]
    public void Plans_of_any_shape_stay_inside_the_margins_and_no_texts_overlap()
    {
        var letters = Gen.String[Gen.Char["Wabil1- /&<é漢"], 1, 12];
        Gen.Select(Gen.Int[0, 5], Gen.Int[1, 9], letters, Gen.String[Gen.Char["abcdefgh -/Wm&<\u0001"], 1, 40], Gen.Bool, Gen.Bool, Gen.Int[1, 6])
            .Sample(
                (glueUps, strips, prefix, name, metric, a4, power) =>
                {
                    var shop = new Shop { Unit = metric ? LengthUnit.Millimetre : LengthUnit.Inch, Denominator = 1 << power };
                    var (plan, designs) = SamplePlan.Build(shop, glueUps, strips, prefix, name);
                    var paper = a4 ? PaperSize.A4 : PaperSize.Letter;
                    foreach (var sheet in BenchSheets.For(plan, designs, paper).AddRange(StripLabels.For(plan, paper)))
                    {
                        SheetRules.AssertInsideMargins(sheet);
                        SheetRules.AssertNoTextOverlaps(sheet.Title, sheet.AllMarks);
                        SheetRules.AssertWellFormed(SvgWriter.Write(sheet), paper.WidthMm, paper.HeightMm);
                    }
                },
                iter: 15);
    }
}
