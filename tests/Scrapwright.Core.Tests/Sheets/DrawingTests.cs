using System.Globalization;
using System.Xml.Linq;
using CsCheck;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Sheets;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Sheets;

public sealed class DrawingTests
{
    [Theory]
    [InlineData(DrawingLook.Hatched)]
    [InlineData(DrawingLook.WoodColours)]
    public void Glue_up_drawing_is_as_last_seen(DrawingLook look)
    {
        var (plan, _) = SamplePlan.Build(new Shop());

        Snapshot.Match("Sheets", $"glue-up-{look}", "svg", SvgWriter.Write(GlueUpDrawing.Draw(plan.GlueUps[0], plan, look)));
    }

    [Theory]
    [InlineData("plate")]
    [InlineData("bar")]
    [InlineData("base")]
    public void Part_drawing_is_as_last_seen(string key)
    {
        var part = new[] { SamplePlan.Plate, SamplePlan.Bar, SamplePlan.Base }.Single(p => p.Key == key);

        Snapshot.Match("Sheets", $"part-{key}", "svg", SvgWriter.Write(PartDrawing.Draw(part, key == "base" ? "A2 B2" : "", new Shop())));
    }

    [Fact]
    public void Bench_sheets_are_as_last_seen()
    {
        var (plan, designs) = SamplePlan.Build(new Shop(), glueUps: 1);

        foreach (var (i, sheet) in BenchSheets.For(plan, designs, PaperSize.Letter).Index())
            Snapshot.Match("Sheets", string.Create(CultureInfo.InvariantCulture, $"sheet-{i + 1:00}"), "svg", SvgWriter.Write(sheet));
    }

    [Fact]
    public void Picture_in_the_readme_is_the_sheet_as_it_is_drawn_now()
    {
        var (plan, designs) = SamplePlan.Build(new Shop());

        Snapshot.MatchFile(Path.Combine("docs", "pictures", "bench-sheet.svg"), SvgWriter.Write(BenchSheets.For(plan, designs, PaperSize.Letter).First(s => s.Title == "Clamps")));
    }

    [Fact]
    public void Every_strip_is_drawn_with_its_label_and_width_in_order_from_the_bottom()
    {
        var (plan, _) = SamplePlan.Build(new Shop());
        var glueUp = plan.GlueUps[0];

        var drawing = GlueUpDrawing.Draw(glueUp, plan, DrawingLook.Hatched);

        var groups = Groups(drawing.Marks).Where(g => g.Name.StartsWith("strip ", StringComparison.Ordinal)).ToArray();
        Assert.Equal(glueUp.Strips.Select(s => $"strip {s.Piece}"), groups.Select(g => g.Name));
        var bottoms = groups.Select(g => g.Marks.OfType<Mark.Rectangle>().First().Frame.BottomMm).ToArray();
        Assert.Equal(bottoms.OrderDescending(), bottoms);
        var texts = drawing.AllMarks.OfType<Mark.Text>().Select(t => t.Letters).ToArray();
        Assert.All(glueUp.Strips, s => Assert.Contains(s.Piece, texts));
    }

    [Fact]
    public void Drawings_of_any_glue_up_and_width_stay_inside_and_keep_their_texts_apart() =>
        Gen.Select(Gen.Int[1, 12], Gen.Double[90, 260], Gen.Double[10, 120], Gen.Bool, Gen.Bool).Sample(
            (strips, width, height, metric, colours) =>
            {
                var (plan, _) = SamplePlan.Build(new Shop { Unit = metric ? LengthUnit.Millimetre : LengthUnit.Inch }, 1, strips, "Wood-");
                var drawing = GlueUpDrawing.Draw(plan.GlueUps[0], plan, colours ? DrawingLook.WoodColours : DrawingLook.Hatched, width, height);
                SheetRules.AssertInside(drawing);
                SheetRules.AssertNoTextOverlaps(drawing.Title, drawing.AllMarks);
                SheetRules.AssertWellFormed(SvgWriter.Write(drawing), drawing.WidthMm, drawing.HeightMm);
            },
            iter: 40);

    [Fact]
    public void Drawings_of_any_holes_stay_inside_and_keep_their_texts_apart() =>
        Gen.Select(Gen.Int[16, 400], Gen.Int[16, 200], Gen.Int[0, 4], Gen.Int[0, 3], Gen.Bool).Sample(
            (length, width, holes, slots, metric) =>
            {
                var unit = Length.FromInches(1, 16);
                var part = new Part
                {
                    Key = "any",
                    Title = "any part",
                    Kind = PartKind.Panel,
                    Length = unit * length,
                    Width = unit * width,
                    Thickness = unit * 6,
                    Count = 1,
                    Holes = [.. Enumerable.Range(0, holes).Select(i => new Hole(unit * (2 + i), unit * (width - 2 - (i * 3 % 7)), unit * 2, unit * 6, i % 2 == 0))],
                    Notches = [.. Enumerable.Range(0, slots).Select(i => new Notch(unit * (1 + (i * 4)), unit * 3, unit * 4, i % 2 == 0))],
                };
                var drawing = PartDrawing.Draw(part, "A1 A2", new Shop { Unit = metric ? LengthUnit.Millimetre : LengthUnit.Inch });
                SheetRules.AssertInside(drawing);
                SheetRules.AssertNoTextOverlaps(drawing.Title, drawing.AllMarks);
            },
            iter: 100);

    [Theory]
    [InlineData("black-walnut")]
    [InlineData("sugar-maple")]
    [InlineData("padauk")]
    [InlineData("purpleheart")]
    public void Labels_on_wood_colours_reach_the_contrast_of_large_text(string species)
    {
        var (plan, _) = SamplePlan.Build(new Shop(), 2);
        var drawings = plan.GlueUps.Select(g => GlueUpDrawing.Draw(g, plan, DrawingLook.WoodColours)).ToArray();
        var offcuts = plan.Request.Pile.Where(o => o.Species == species).Select(o => o.Label).ToHashSet();

        var strips = drawings.SelectMany(d => Groups(d.Marks)).Where(g => g.Name.StartsWith("strip ", StringComparison.Ordinal) && offcuts.Contains(g.Name[6..])).ToArray();

        Assert.NotEmpty(strips);
        foreach (var strip in strips)
        {
            var fill = strip.Marks.OfType<Mark.Rectangle>().First(r => r.Fill is not null).Fill!;
            // WCAG 2, success criterion 1.4.3: 4.5 to 1 for text.
            Assert.All(strip.Marks.OfType<Mark.Text>(), t => Assert.True(Contrast(fill, t.Colour) >= 4.5, $"{species} {fill} {t.Colour}"));
        }
    }

    [Theory]
    [InlineData("1 3/8 in", "1|3⁄8 in", 3)]
    [InlineData("3/8", "3⁄8", 3)]
    [InlineData("G1/2", "G1/2", 1)]
    [InlineData("W3 1/3", "W3 1/3", 1)]
    public void Fractions_are_set_as_fractions_and_ids_are_left_alone(string text, string letters, int atLeastRuns)
    {
        var part = SamplePlan.Plate with { Title = text };

        var head = PartDrawing.Draw(part, "", new Shop()).AllMarks.OfType<Mark.Text>().First();

        Assert.Equal(letters.Replace('|', '\u00a0'), head.Letters);
        Assert.True(head.Runs.Length >= atLeastRuns);
        Assert.Equal(atLeastRuns > 1, head.Runs.Any(r => r.RaiseMm > 0));
    }

    [Fact]
    public void Svg_escapes_what_people_write()
    {
        var part = SamplePlan.Plate with { Title = "<b> & \"end\" \u0001 漢" };

        var root = SheetRules.AssertWellFormed(SvgWriter.Write(PartDrawing.Draw(part, "", new Shop())), 180, PartDrawing.Draw(part, "", new Shop()).HeightMm);

        Assert.Contains("<b> & \"end\"", root.Descendants(XName.Get("title", "http://www.w3.org/2000/svg")).Single().Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_species_of_a_plan_has_a_hatch_of_its_own()
    {
        var (plan, designs) = SamplePlan.Build(new Shop(), 2);
        var sheet = BenchSheets.For(plan, designs, PaperSize.Letter)[0];
        var species = plan.GlueUps.SelectMany(g => g.Strips).Select(s => plan.Request.Pile.Single(o => o.Label == s.Offcut).Species).Distinct().Count();

        var marks = sheet.AllMarks.ToArray();
        var patterns = marks.OfType<Mark.Hatch>().Select(h => (h.Strokes.Length, Slope(h.Strokes[0]))).ToArray();

        Assert.Equal(species - 1, patterns.Length);
        Assert.Equal(patterns.Length, patterns.Distinct().Count());
    }

    private static string Slope(Stroke stroke) => FormattableString.Invariant($"{Math.Sign(stroke.To.XMm - stroke.From.XMm)} {Math.Sign(Math.Round(stroke.To.YMm - stroke.From.YMm, 6))}");

    private static IEnumerable<Mark.Group> Groups(IEnumerable<Mark> marks) => marks.OfType<Mark.Group>().SelectMany(g => new[] { g }.Concat(Groups(g.Marks)));

    private static double Contrast(string one, string other)
    {
        var (a, b) = (Luminance(one) + 0.05, Luminance(other) + 0.05);
        return Math.Max(a, b) / Math.Min(a, b);
    }

    // WCAG 2, relative luminance; written out again here so that the check does not share the drawing's code.
    private static double Luminance(string hex)
    {
        var channels = Enumerable.Range(0, 3).Select(i => Convert.ToByte(hex.Substring(1 + (2 * i), 2), 16) / 255.0)
            .Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4)).ToArray();
        return (0.2126 * channels[0]) + (0.7152 * channels[1]) + (0.0722 * channels[2]);
    }
}
