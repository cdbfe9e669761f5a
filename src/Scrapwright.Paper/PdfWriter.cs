using System.Text;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Scrapwright.Core.Sheets;

namespace Scrapwright.Paper;

/// <summary>Writes sheets as a PDF: vectors true to scale, the font embedded, the same bytes for the same sheets.</summary>
public static class PdfWriter
{
    private const double PointsPerMm = 72 / 25.4;

    // A fixed date: a file must not differ because it was written a second later.
    private static readonly DateTime Written = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <summary>Writes one page per sheet. The stream stays open.</summary>
    /// <param name="sheets">The pages in order; at least one.</param>
    /// <param name="stream">Where to write.</param>
    /// <exception cref="ArgumentException">No sheet.</exception>
    public static void Write(IReadOnlyList<Sheet> sheets, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(sheets);
        ArgumentNullException.ThrowIfNull(stream);
        if (sheets.Count == 0) throw new ArgumentException("A PDF needs at least one sheet.", nameof(sheets));
        EmbeddedFonts.Use();
        using var document = new PdfDocument();
        document.Info.Title = sheets[0].Title;
        document.Info.Creator = "Scrapwright";
        document.Info.CreationDate = Written;
        document.Info.ModificationDate = Written;
        document.Language = "en";
        foreach (var sheet in sheets) Draw(document, sheet);
        using var drawn = new MemoryStream();
        document.Save(drawn, closeStream: false);
        stream.Write(StableIdentity.Apply(drawn.ToArray()));
    }

    private static void Draw(PdfDocument document, Sheet sheet)
    {
        var page = document.AddPage();
        page.Width = XUnit.FromMillimeter(sheet.Paper.WidthMm);
        page.Height = XUnit.FromMillimeter(sheet.Paper.HeightMm);
        document.Outlines.Add(sheet.Title, page, true);
        using var graphics = XGraphics.FromPdfPage(page);
        foreach (var mark in sheet.Marks) Draw(graphics, mark);
    }

    private static void Draw(XGraphics graphics, Mark mark)
    {
        switch (mark)
        {
            case Mark.Group group:
                foreach (var inner in group.Marks) Draw(graphics, inner);
                break;
            case Mark.Line line:
                graphics.DrawLine(Pen(line.Ink), Point(line.From), Point(line.To));
                break;
            case Mark.Rectangle box:
                var frame = box.Frame;
                graphics.DrawRectangle(PenOrNone(box.Ink), Brush(box.Fill), new XRect(P(frame.LeftMm), P(frame.TopMm), P(frame.WidthMm), P(frame.HeightMm)));
                break;
            case Mark.Polygon polygon:
                graphics.DrawPolygon(PenOrNone(polygon.Ink), Brush(polygon.Fill), [.. polygon.Corners.Select(Point)], XFillMode.Winding);
                break;
            case Mark.Circle circle:
                var (middle, radius) = (Point(circle.Middle), P(circle.RadiusMm));
                graphics.DrawEllipse(PenOrNone(circle.Ink), Brush(circle.Fill), middle.X - radius, middle.Y - radius, 2 * radius, 2 * radius);
                break;
            case Mark.Hatch hatch:
                var pen = Pen(hatch.Ink);
                foreach (var stroke in hatch.Strokes) graphics.DrawLine(pen, Point(stroke.From), Point(stroke.To));
                break;
            case Mark.Text text:
                Draw(graphics, text);
                break;
            default:
                throw new ArgumentException($"Unknown mark {mark.GetType().Name}.", nameof(mark));
        }
    }

    private static void Draw(XGraphics graphics, Mark.Text text)
    {
        var x = text.Foot.XMm;
        var brush = new XSolidBrush(Colour(text.Colour));
        foreach (var run in text.Runs)
        {
            var font = new XFont(FontAdvances.Family, run.SizePt, text.Bold ? XFontStyleEx.Bold : XFontStyleEx.Regular);
            graphics.DrawString(Known(run.Text), font, brush, P(x), P(text.Foot.YMm - run.RaiseMm), XStringFormats.BaseLineLeft);
            x += FontAdvances.WidthMm(run.Text, run.SizePt, text.Bold) + run.SpaceMm;
        }
    }

    // Letters that the font lacks are shown as a question mark rather than as nothing.
    private static string Known(string text)
    {
        var known = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes()) known.Append(FontAdvances.Has(rune.Value) ? rune.ToString() : "?");
        return known.ToString();
    }

    private static double P(double millimetres) => millimetres * PointsPerMm;

    private static XPoint Point(Spot spot) => new(P(spot.XMm), P(spot.YMm));

    private static XPen? PenOrNone(Ink? ink) => ink is null ? null : Pen(ink);

    private static XPen Pen(Ink ink)
    {
        var pen = new XPen(Colour(ink.Colour), P(ink.WidthMm)) { LineCap = XLineCap.Flat, LineJoin = XLineJoin.Miter };
        if (ink.Dashed) pen.DashPattern = [2 / ink.WidthMm, 1.2 / ink.WidthMm];
        return pen;
    }

    private static XSolidBrush? Brush(string? fill) => fill is null ? null : new XSolidBrush(Colour(fill));

    private static XColor Colour(string hex) => XColor.FromArgb(
        Convert.ToByte(hex[1..3], 16), Convert.ToByte(hex[3..5], 16), Convert.ToByte(hex[5..7], 16));
}
