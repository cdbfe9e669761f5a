using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Sheets;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Sheets;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace Scrapwright.Paper.Tests;

public sealed partial class PdfWriterTests
{
    private const double MmPerPt = 25.4 / 72;
    private const double ToleranceMm = 0.1;

    private static readonly (Plan Plan, ImmutableArray<GiftDesign> Designs) Sample = SamplePlan.Build(new Shop());

    [Fact]
    public void Letter_pages_are_612_by_792_points()
    {
        using var pdf = Open(BenchSheets.For(Sample.Plan, Sample.Designs, PaperSize.Letter));

        Assert.All(pdf.GetPages(), page => Assert.Equal((612.0, 792.0), (Math.Round(page.Width, 2), Math.Round(page.Height, 2))));
    }

    [Fact]
    public void A4_pages_are_595_28_by_841_89_points()
    {
        using var pdf = Open(BenchSheets.For(Sample.Plan, Sample.Designs, PaperSize.A4));

        Assert.All(pdf.GetPages(), page => Assert.Equal((595.28, 841.89), (Math.Round(page.Width, 2), Math.Round(page.Height, 2))));
    }

    [Fact]
    public void Every_gift_strip_and_glue_up_width_can_be_read_in_the_file()
    {
        using var pdf = Open(BenchSheets.For(Sample.Plan, Sample.Designs, PaperSize.Letter));

        var text = string.Concat(pdf.GetPages().Select(Letters));

        foreach (var gift in Sample.Plan.Request.Gifts) Assert.Contains(gift.Label, text, StringComparison.Ordinal);
        foreach (var strip in Sample.Plan.GlueUps.SelectMany(g => g.Strips))
        {
            Assert.Contains(strip.Piece, text, StringComparison.Ordinal);
            Assert.Contains(Plain(LengthFormatter.Format(strip.Width, new LengthStyle { Denominator = 32 })), text, StringComparison.Ordinal);
        }

        Assert.Contains("Theneighbour", text, StringComparison.Ordinal);
        Assert.Contains("≥11⁄4in", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_is_set_in_the_embedded_font_only()
    {
        using var pdf = Open(BenchSheets.For(Sample.Plan, Sample.Designs, PaperSize.Letter));

        var fonts = pdf.GetPages().SelectMany(p => p.Letters).Select(l => l.FontName).Distinct().ToArray();

        Assert.NotEmpty(fonts);
        Assert.All(fonts, name => Assert.Contains("Sans", name, StringComparison.Ordinal));
    }

    [Fact]
    public void Letters_lie_where_the_page_model_puts_them()
    {
        var sheets = BenchSheets.For(Sample.Plan, Sample.Designs, PaperSize.Letter);
        using var pdf = Open(sheets);

        foreach (var (i, sheet) in sheets.Index())
        {
            var letters = pdf.GetPage(i + 1).Letters;
            foreach (var text in sheet.AllMarks.OfType<Mark.Text>())
            {
                var (x, y) = (text.Foot.XMm / MmPerPt, 792 - ((text.Foot.YMm - text.Runs[0].RaiseMm) / MmPerPt));
                Assert.True(
                    letters.Any(l => Math.Abs(l.StartBaseLine.X - x) < 0.05 && Math.Abs(l.StartBaseLine.Y - y) < 0.05 && l.Value == text.Letters[..1]),
                    $"sheet {i + 1}: '{text.Letters}' at {x:0.0}, {y:0.0}");
            }
        }
    }

    [Fact]
    public void Plate_and_holes_are_drawn_to_the_stated_scale()
    {
        using var pdf = Open(BenchSheets.For(Sample.Plan, Sample.Designs, PaperSize.Letter));
        var page = pdf.GetPages().Single(p => Letters(p).Contains("plate", StringComparison.Ordinal) && Letters(p).Contains("onitsface", StringComparison.Ordinal));
        var scale = StatedScale(page);
        var plate = SamplePlan.Plate;
        var boxes = Boxes(page);

        var outline = boxes.Single(b => Near(b.Width * MmPerPt, plate.Length.Millimetres / scale) && Near(b.Height * MmPerPt, plate.Width.Millimetres / scale));
        foreach (var hole in plate.Holes)
        {
            Assert.Contains(boxes, b =>
                Near(b.Width * MmPerPt, hole.Diameter.Millimetres / scale)
                && Near((b.Centroid.X - outline.Left) * MmPerPt, hole.FromEnd.Millimetres / scale)
                && Near((b.Centroid.Y - outline.Bottom) * MmPerPt, hole.FromEdge.Millimetres / scale));
        }
    }

    [Fact]
    public void Strips_of_a_glue_up_are_drawn_to_the_stated_scale_in_their_order()
    {
        using var pdf = Open(BenchSheets.For(Sample.Plan, Sample.Designs, PaperSize.A4));
        var glueUp = Sample.Plan.GlueUps[0];
        var page = pdf.GetPages().First(p => Letters(p).Contains($"Glueup·{glueUp.Id}", StringComparison.Ordinal));
        var scale = StatedScale(page);
        var boxes = Boxes(page);

        double? lower = null;
        foreach (var strip in glueUp.Strips)
        {
            var found = boxes.Where(b => Near(b.Width * MmPerPt, strip.Length.Millimetres / scale) && Near(b.Height * MmPerPt, strip.Width.Millimetres / scale)
                && (lower is null || Near(b.Bottom * MmPerPt, lower.Value))).ToArray();
            Assert.NotEmpty(found);
            lower = found[0].Top * MmPerPt;
        }
    }

    [Theory]
    [InlineData(LengthUnit.Inch, 50.8)]
    [InlineData(LengthUnit.Millimetre, 50)]
    public void Every_page_has_a_check_bar_of_the_length_it_states(LengthUnit unit, double millimetres)
    {
        var (plan, designs) = SamplePlan.Build(new Shop { Unit = unit });
        using var pdf = Open(BenchSheets.For(plan, designs, PaperSize.A4));

        Assert.All(pdf.GetPages(), page => Assert.Contains(Boxes(page), b => Near(b.Width * MmPerPt, millimetres) && b.Height < 0.01));
    }

    [Fact]
    public void Same_sheets_give_the_same_bytes()
    {
        var sheets = BenchSheets.For(Sample.Plan, Sample.Designs, PaperSize.Letter);

        Assert.Equal(Bytes(sheets), Bytes(sheets));
    }

    [Fact]
    public void No_sheets_are_refused() => Assert.Throws<ArgumentException>(() => PdfWriter.Write([], new MemoryStream()));

    private static bool Near(double found, double expected) => Math.Abs(found - expected) <= ToleranceMm;

    private static PdfRectangle[] Boxes(Page page) => [.. page.Paths.Select(p => p.GetBoundingRectangle()).OfType<PdfRectangle>()];

    private static string Letters(Page page) => Plain(string.Concat(page.Letters.Select(l => l.Value)));

    private static string Plain(string text)
    {
        var plain = new StringBuilder();
        foreach (var c in text.Where(c => !char.IsWhiteSpace(c))) plain.Append(c == '/' ? '⁄' : c);
        return plain.ToString();
    }

    private static byte[] Bytes(IReadOnlyList<Sheet> sheets)
    {
        using var stream = new MemoryStream();
        PdfWriter.Write(sheets, stream);
        return stream.ToArray();
    }

    private static PdfDocument Open(IReadOnlyList<Sheet> sheets) => PdfDocument.Open(Bytes(sheets));

    // The number after the first "scale 1:" on the page; the sample needs no scale below 1:9.
    private static int StatedScale(Page page) =>
        int.Parse(Scale().Match(string.Concat(page.Letters.Select(l => l.Value.Length == 1 && char.IsWhiteSpace(l.Value[0]) ? " " : l.Value))).Groups[1].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"scale 1:(\d)")]
    private static partial Regex Scale();
}
