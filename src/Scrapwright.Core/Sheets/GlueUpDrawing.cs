using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Sheets;

/// <summary>A glue-up as it lies on the bench: strips in order with their labels and widths, true to scale, grain from left to right, lower edge at the bottom.</summary>
public static class GlueUpDrawing
{
    private const double LabelPt = 12;
    private const double RowMm = 5.6;

    /// <summary>Draws one glue-up.</summary>
    /// <param name="glueUp">The glue-up.</param>
    /// <param name="plan">The plan it is of.</param>
    /// <param name="look">Hatched for paper, wood colours for screens.</param>
    /// <param name="widthMm">Width of the drawing, 80 or more. [mm]</param>
    /// <param name="heightMm">Height that the panel itself may take. [mm]</param>
    public static Drawing Draw(GlueUp glueUp, Plan plan, DrawingLook look, double widthMm = 180, double heightMm = 80)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Draw(glueUp, new PlanFacts(plan, []), look, widthMm, heightMm);
    }

    internal static Drawing Draw(GlueUp glueUp, PlanFacts facts, DrawingLook look, double widthMm, double heightMm)
    {
        ArgumentNullException.ThrowIfNull(glueUp);
        var strips = glueUp.Strips;
        var texts = strips.Select((s, i) => (Place: $"{i + 1}", Width: facts.Sizes.Of(s.Width), Wood: PlanFacts.SpeciesName(facts.SpeciesOf(s.Offcut)))).ToArray();
        var sizeColumn = texts.Max(t => Typesetting.WidthMm(t.Width, LabelPt, true)) + 3;
        var woodColumn = Math.Min(widthMm * 0.2, texts.Max(t => Typesetting.WidthMm(t.Wood, 9, false)));
        var idColumn = Math.Min(widthMm * 0.25, strips.Max(s => Typesetting.WidthMm(s.Piece, 10, true)) + 2);
        var notes = sizeColumn + woodColumn + idColumn + 14;
        var leftMm = Typesetting.WidthMm(facts.Sizes.Of(glueUp.RoughWidth), 10, true) + 7;
        var longest = Length.Zero;
        foreach (var strip in strips) longest = Length.Max(longest, strip.Length);
        var panel = Length.Sum(strips.Select(s => s.Width));
        var scale = DrawingScale.Fit(longest, panel, widthMm - notes - leftMm, heightMm);
        var wood = new WoodFill(look, facts.Hatches);
        var pen = new Pen();

        pen.Text(leftMm, 4, $"grain", 8);
        Grain(pen, leftMm + 9, 3, 22);
        pen.Text(leftMm + 36, 4, DrawingScale.Words(scale), 8);
        const double Top = 8;
        var rowsMm = strips.Length * RowMm;
        var panelMm = panel.Millimetres / scale;
        var panelTop = Top + Math.Max(0, (rowsMm - panelMm) / 2);
        var bottom = panelTop + panelMm;
        var rowBottom = Math.Max(bottom, panelTop + ((panelMm + rowsMm) / 2));
        var right = leftMm + (longest.Millimetres / scale);

        var y = bottom;
        var previous = rowBottom;
        for (var i = 0; i < strips.Length; i++)
        {
            var strip = strips[i];
            var height = strip.Width.Millimetres / scale;
            var frame = new Frame(leftMm, y - height, strip.Length.Millimetres / scale, height);
            Strip(pen, wood, facts, strip, frame);
            var room = (strips.Length - 1 - i) * RowMm;
            var row = Math.Clamp(frame.Middle.YMm, Top + room + (RowMm / 2), previous - (RowMm / 2));
            Note(pen, texts[i], strip, frame, row, right + 6, sizeColumn, idColumn, woodColumn);
            previous = row - (RowMm / 2);
            y -= height;
        }

        var overlap = leftMm + (glueUp.Overlap.Millimetres / scale);
        if (right - overlap > 0.3) pen.Line(overlap, panelTop - 1.5, overlap, bottom + 1.5, Ink.ThinDashed);
        Dimension.Upright(pen, panelTop, bottom, leftMm - 4, leftMm, facts.Sizes.Of(glueUp.RoughWidth), 10, Side.Right);
        Dimension.Level(pen, leftMm, overlap, Math.Max(bottom, rowBottom) + 7, bottom, facts.Sizes.Of(glueUp.Overlap), 10);
        var total = Math.Max(bottom, rowBottom) + 10;
        var summary = $"{glueUp.Id}: {strips.Length} strips from the lower edge: "
            + string.Join("; ", strips.Select((s, i) => $"{s.Piece}, {texts[i].Wood}, {texts[i].Width}")) + ".";
        return new(widthMm, total, $"Glue-up {glueUp.Id}", summary, [new Mark.Group($"glue-up {glueUp.Id}", pen.Marks)]);
    }

    private static void Strip(Pen pen, WoodFill wood, PlanFacts facts, Strip strip, Frame frame)
    {
        var species = facts.SpeciesOf(strip.Offcut);
        var inner = new Pen();
        wood.Fill(inner, frame, species, Ink.Medium);
        var width = Typesetting.WidthMm(strip.Piece, LabelPt, true);
        if (frame.HeightMm >= 4.9 && width + 8 < frame.WidthMm)
            inner.Plate(frame.Middle.XMm, frame.Middle.YMm, strip.Piece, LabelPt, true, Side.Middle, wood.Plate, wood.InkOn(species));
        pen.Add(new Mark.Group($"strip {strip.Piece}", inner.Marks));
    }

    private static void Note(
        Pen pen, (string Place, string Width, string Wood) text, Strip strip, Frame frame, double rowMm, double xMm, double sizeMm, double idMm, double woodMm)
    {
        pen.Line(frame.RightMm + 0.8, frame.Middle.YMm, xMm - 2.2, rowMm, Ink.Thin);
        pen.Line(xMm - 2.2, rowMm, xMm - 0.8, rowMm, Ink.Thin);
        pen.Text(xMm + 5, rowMm + (FontAdvances.CapitalMm(9) / 2), text.Place, 9, false, Side.Right);
        pen.Text(xMm + 7, rowMm + (FontAdvances.CapitalMm(10) / 2), Typesetting.Shorten(strip.Piece, 10, true, idMm), 10, true);
        pen.Text(xMm + 7 + idMm + sizeMm - 2, rowMm + (FontAdvances.CapitalMm(LabelPt) / 2), text.Width, LabelPt, true, Side.Right);
        pen.Text(xMm + 7 + idMm + sizeMm, rowMm + (FontAdvances.CapitalMm(9) / 2), Typesetting.Shorten(text.Wood, 9, false, woodMm), 9);
    }

    internal static void Grain(Pen pen, double xMm, double yMm, double lengthMm)
    {
        pen.Line(xMm, yMm, xMm + lengthMm, yMm, Ink.Fine);
        pen.Add(new Mark.Polygon([new(xMm, yMm), new(xMm + 2.4, yMm - 0.5), new(xMm + 2.4, yMm + 0.5)], null, Ink.Black));
        pen.Add(new Mark.Polygon([new(xMm + lengthMm, yMm), new(xMm + lengthMm - 2.4, yMm - 0.5), new(xMm + lengthMm - 2.4, yMm + 0.5)], null, Ink.Black));
    }
}
