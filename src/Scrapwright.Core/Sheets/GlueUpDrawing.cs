using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Sheets;

/// <summary>A glue-up as it lies on the bench: strips in order with their labels and widths, true to scale, grain from left to right, lower edge at the bottom.</summary>
public static class GlueUpDrawing
{
    private const double LabelPt = 12;
    private const double RowMm = 5.6;
    private const double PlateMm = 4.8;

    // Narrower than this (a phone) there is no room for the upright dimension and the names of the woods.
    private const double NarrowMm = 120;

    /// <summary>Draws one glue-up.</summary>
    /// <param name="glueUp">The glue-up.</param>
    /// <param name="plan">The plan it is of.</param>
    /// <param name="look">Hatched for paper, wood colours for screens.</param>
    /// <param name="widthMm">Width of the drawing, 90 or more; below 120 without the names of the woods. [mm]</param>
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
        var letters = Sisters.LettersOf(strips);
        var texts = strips.Select((s, i) => (
            Place: $"{i + 1}{(letters[i].Length > 0 ? Typesetting.Tie + letters[i] : "")}",
            Width: facts.Sizes.Of(s.Width),
            Wood: string.Join(", ", new[] { PlanWords.LieOf(s), SpeciesTable.NameOf(facts.SpeciesOf(s.Offcut)) }.Where(t => t.Length > 0)))).ToArray();
        var longest = Length.Zero;
        foreach (var strip in strips) longest = Length.Max(longest, strip.Length);
        var panel = Length.Sum(strips.Select(s => s.Width));
        var narrow = widthMm < NarrowMm;
        var leftMm = narrow ? 0.5 : Typesetting.WidthMm(facts.Sizes.Of(glueUp.RoughWidth), 10, true) + 7;
        var columns = Columns(strips, texts, widthMm);
        // Where every strip is wide enough on paper its label stands on it, as on the wood; otherwise beside it.
        var scale = DrawingScale.Fit(longest, panel, widthMm - leftMm, heightMm);
        var inside = strips.All(s => s.Width.Millimetres / scale >= PlateMm && s.Length.Millimetres / scale >= columns.Sum() + 16);
        if (!inside) scale = DrawingScale.Fit(longest, panel, widthMm - leftMm - columns.Sum() - 16, heightMm);
        var wood = new WoodFill(look, facts.Hatches);
        var pen = new Pen();

        pen.Text(leftMm, 4, "grain", 8);
        Grain(pen, leftMm + 9, 3, 22);
        var words = DrawingScale.Words(scale) + (narrow ? $" · {facts.Sizes.Of(glueUp.RoughWidth)} wide" : "");
        pen.Text(leftMm + 36, 4, Typesetting.Shorten(words, 8, false, widthMm - leftMm - 36), 8);
        const double Top = 8;
        var rowsMm = inside ? 0 : strips.Length * RowMm;
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
            Strip(pen, wood, facts, strip, texts[i], frame, inside ? columns : []);
            if (!inside)
            {
                var room = (strips.Length - 1 - i) * RowMm;
                var row = Math.Max(Top + room + (RowMm / 2), Math.Min(frame.Middle.YMm, previous - (RowMm / 2)));
                Leader(pen, frame, row, right + 6);
                Label(pen, strip, texts[i], columns, right + 6, row, null, Ink.Black);
                previous = row - (RowMm / 2);
            }

            y -= height;
        }

        var overlap = leftMm + (glueUp.Overlap.Millimetres / scale);
        if (right - overlap > 0.3) pen.Line(overlap, panelTop - 1.5, overlap, bottom + 1.5, Ink.ThinDashed);
        if (!narrow) Dimension.Upright(pen, panelTop, bottom, leftMm - 4, leftMm, facts.Sizes.Of(glueUp.RoughWidth), 10, Side.Right);
        Dimension.Level(pen, leftMm, overlap, Math.Max(bottom, rowBottom) + 7, bottom, facts.Sizes.Of(glueUp.Overlap), 10);
        var total = Math.Max(bottom, rowBottom) + 10;
        var summary = $"{glueUp.Id}: {strips.Length} strips from the lower edge: "
            + string.Join("; ", strips.Select((s, i) => $"{s.Piece}, {(letters[i].Length > 0 ? $"sister {letters[i]}, " : "")}{texts[i].Wood}, {texts[i].Width}")) + ".";
        return new(widthMm, total, $"Glue-up {glueUp.Id}", summary, [new Mark.Group($"glue-up {glueUp.Id}", pen.Marks)]);
    }

    // Widths of the columns of a label: place, id, width, wood.
    private static double[] Columns(ImmutableArray<Strip> strips, (string Place, string Width, string Wood)[] texts, double widthMm) =>
    [
        Math.Max(7, texts.Max(t => Typesetting.WidthMm(t.Place, 9, false)) + 4),
        Math.Min(widthMm * 0.25, strips.Max(s => Typesetting.WidthMm(s.Piece, LabelPt, true)) + 3),
        texts.Max(t => Typesetting.WidthMm(t.Width, LabelPt, true)) + 3,
        widthMm < NarrowMm ? 0 : Math.Min(widthMm * 0.2, texts.Max(t => Typesetting.WidthMm(t.Wood, 9, false))),
    ];

    private static void Strip(Pen pen, WoodFill wood, PlanFacts facts, Strip strip, (string Place, string Width, string Wood) text, Frame frame, double[] columns)
    {
        var species = facts.SpeciesOf(strip.Offcut);
        var inner = new Pen();
        wood.Fill(inner, frame, species, Ink.Medium);
        if (columns.Length > 0)
            Label(inner, strip, text, columns, frame.LeftMm + 4, frame.Middle.YMm, wood.Plate, wood.InkOn(species));
        else if (frame.HeightMm >= 4.9 && Typesetting.WidthMm(strip.Piece, LabelPt, true) + 8 < frame.WidthMm)
            inner.Plate(frame.Middle.XMm, frame.Middle.YMm, strip.Piece, LabelPt, true, Side.Middle, wood.Plate, wood.InkOn(species));
        pen.Add(new Mark.Group($"strip {strip.Piece}", inner.Marks));
    }

    private static void Label(
        Pen pen, Strip strip, (string Place, string Width, string Wood) text, double[] columns, double xMm, double rowMm, string? plate, string colour)
    {
        if (plate is not null) pen.Box(new(xMm - 0.5, rowMm - (PlateMm / 2) + 0.1, columns.Sum() + 2, PlateMm - 0.2), null, plate);
        double Foot(double sizePt) => rowMm + (FontAdvances.CapitalMm(sizePt) / 2);
        pen.Text(xMm + columns[0] - 2, Foot(9), text.Place, 9, false, Side.Right, colour);
        pen.Text(xMm + columns[0], Foot(LabelPt), Typesetting.Shorten(strip.Piece, LabelPt, true, columns[1] - 1), LabelPt, true, Side.Left, colour);
        pen.Text(xMm + columns[..3].Sum() - 3, Foot(LabelPt), text.Width, LabelPt, true, Side.Right, colour);
        if (columns[3] > 0) pen.Text(xMm + columns[..3].Sum(), Foot(9), Typesetting.Shorten(text.Wood, 9, false, columns[3]), 9, false, Side.Left, colour);
    }

    private static void Leader(Pen pen, Frame frame, double rowMm, double xMm)
    {
        pen.Line(frame.RightMm + 0.8, frame.Middle.YMm, xMm - 2.2, rowMm, Ink.Thin);
        pen.Line(xMm - 2.2, rowMm, xMm - 0.8, rowMm, Ink.Thin);
    }

    internal static void Grain(Pen pen, double xMm, double yMm, double lengthMm)
    {
        pen.Line(xMm, yMm, xMm + lengthMm, yMm, Ink.Fine);
        pen.Add(new Mark.Polygon([new(xMm, yMm), new(xMm + 2.4, yMm - 0.5), new(xMm + 2.4, yMm + 0.5)], null, Ink.Black));
        pen.Add(new Mark.Polygon([new(xMm + lengthMm, yMm), new(xMm + lengthMm - 2.4, yMm - 0.5), new(xMm + lengthMm - 2.4, yMm + 0.5)], null, Ink.Black));
    }
}
