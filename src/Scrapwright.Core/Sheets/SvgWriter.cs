using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Scrapwright.Core.Sheets;

/// <summary>Writes sheets and drawings as standalone SVG in millimetres, with a title and a description that screen readers read.</summary>
public static class SvgWriter
{
    /// <summary>One page.</summary>
    public static string Write(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return Write(sheet.Paper.WidthMm, sheet.Paper.HeightMm, sheet.Title, sheet.Summary, sheet.Marks, Ink.White);
    }

    /// <summary>One drawing, on nothing.</summary>
    public static string Write(Drawing drawing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        return Write(drawing.WidthMm, drawing.HeightMm, drawing.Title, drawing.Summary, drawing.Marks, background: null);
    }

    private static string Write(double widthMm, double heightMm, string title, string summary, ImmutableArray<Mark> marks, string? background)
    {
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{N(widthMm)}mm\" height=\"{N(heightMm)}mm\" ");
        svg.Append(CultureInfo.InvariantCulture, $"viewBox=\"0 0 {N(widthMm)} {N(heightMm)}\" role=\"img\" ");
        svg.Append("font-family=\"'Open Sans', 'Noto Sans', sans-serif\" style=\"font-kerning:none\" stroke-linecap=\"butt\">\n");
        svg.Append(CultureInfo.InvariantCulture, $"<title>{Escape(title)}</title>\n<desc>{Escape(summary)}</desc>\n");
        if (background is not null)
            svg.Append(CultureInfo.InvariantCulture, $"<rect width=\"{N(widthMm)}\" height=\"{N(heightMm)}\" fill=\"{background}\"/>\n");
        foreach (var mark in marks) Write(svg, mark);
        return svg.Append("</svg>\n").ToString();
    }

    private static void Write(StringBuilder svg, Mark mark)
    {
        var invariant = CultureInfo.InvariantCulture;
        switch (mark)
        {
            case Mark.Group group:
                svg.Append(invariant, $"<g data-name=\"{Escape(group.Name)}\">\n");
                foreach (var inner in group.Marks) Write(svg, inner);
                svg.Append("</g>\n");
                break;
            case Mark.Line line:
                svg.Append(invariant, $"<path d=\"{Move(line.From)}{Line(line.To)}\"{Paint(line.Ink, null)}/>\n");
                break;
            case Mark.Rectangle box:
                svg.Append(invariant, $"<rect x=\"{N(box.Frame.LeftMm)}\" y=\"{N(box.Frame.TopMm)}\" width=\"{N(box.Frame.WidthMm)}\" height=\"{N(box.Frame.HeightMm)}\"{Paint(box.Ink, box.Fill)}/>\n");
                break;
            case Mark.Polygon polygon:
                svg.Append(invariant, $"<path d=\"{Move(polygon.Corners[0])}{string.Concat(polygon.Corners.Skip(1).Select(Line))}Z\"{Paint(polygon.Ink, polygon.Fill)}/>\n");
                break;
            case Mark.Circle circle:
                svg.Append(invariant, $"<circle cx=\"{N(circle.Middle.XMm)}\" cy=\"{N(circle.Middle.YMm)}\" r=\"{N(circle.RadiusMm)}\"{Paint(circle.Ink, circle.Fill)}/>\n");
                break;
            case Mark.Hatch hatch:
                svg.Append(invariant, $"<path d=\"{string.Concat(hatch.Strokes.Select(s => Move(s.From) + Line(s.To)))}\"{Paint(hatch.Ink, null)}/>\n");
                break;
            case Mark.Text text:
                Write(svg, text);
                break;
            default:
                throw new ArgumentException($"Unknown mark {mark.GetType().Name}.", nameof(mark));
        }
    }

    // textLength holds the measured width also where the reader has another font, so nothing can run into its neighbour.
    private static void Write(StringBuilder svg, Mark.Text text)
    {
        var invariant = CultureInfo.InvariantCulture;
        svg.Append(invariant, $"<text x=\"{N(text.Foot.XMm)}\" y=\"{N(text.Foot.YMm)}\" textLength=\"{N(text.WidthMm)}\" lengthAdjust=\"spacingAndGlyphs\"");
        if (text.Bold) svg.Append(" font-weight=\"700\"");
        if (text.Colour != Ink.Black) svg.Append(invariant, $" fill=\"{text.Colour}\"");
        if (text.Runs is [var only] && only.RaiseMm == 0)
        {
            svg.Append(invariant, $" font-size=\"{N(only.SizePt * 25.4 / 72)}\">{Escape(only.Text)}</text>\n");
            return;
        }

        svg.Append('>');
        double raised = 0;
        double space = 0;
        foreach (var run in text.Runs)
        {
            svg.Append(invariant, $"<tspan font-size=\"{N(run.SizePt * 25.4 / 72)}\"");
            if (Math.Abs(run.RaiseMm - raised) > 0.0005) svg.Append(invariant, $" dy=\"{N(raised - run.RaiseMm)}\"");
            if (space > 0) svg.Append(invariant, $" dx=\"{N(space)}\"");
            (raised, space) = (run.RaiseMm, run.SpaceMm);
            svg.Append(invariant, $">{Escape(run.Text)}</tspan>");
        }

        svg.Append("</text>\n");
    }

    private static string Paint(Ink? ink, string? fill)
    {
        var paint = $" fill=\"{fill ?? "none"}\"";
        if (ink is null) return paint;
        paint += $" stroke=\"{ink.Colour}\" stroke-width=\"{N(ink.WidthMm)}\"";
        return ink.Dashed ? paint + " stroke-dasharray=\"2 1.2\"" : paint;
    }

    private static string Move(Spot spot) => $"M{N(spot.XMm)} {N(spot.YMm)}";

    private static string Line(Spot spot) => $"L{N(spot.XMm)} {N(spot.YMm)}";

    // Three decimals are a micrometre, finer than any printer; "-0" would be noise.
    private static string N(double millimetres)
    {
        var text = millimetres.ToString("0.###", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    private static string Escape(string text)
    {
        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            clean.Append(rune.Value switch
            {
                '&' => "&amp;",
                '<' => "&lt;",
                '>' => "&gt;",
                '"' => "&quot;",
                0xfffe or 0xffff => "\ufffd",
                < 0x20 => " ",
                _ => rune.ToString(),
            });
        }

        return clean.ToString();
    }
}
