using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Sheets;

/// <summary>A crosscut layout: the piece from its marked end, the blanks with their ids, the kerfs between them, true to scale.</summary>
public static class CutDrawing
{
    /// <summary>Draws one crosscut.</summary>
    /// <param name="step">A step that crosscuts.</param>
    /// <param name="work">One work of it.</param>
    /// <param name="plan">The plan it is of.</param>
    /// <param name="look">Hatched for paper, wood colours for screens.</param>
    /// <param name="widthMm">Width of the drawing, 80 or more. [mm]</param>
    /// <param name="heightMm">Height that the piece itself may take. [mm]</param>
    public static Drawing Draw(Step step, Work work, Plan plan, DrawingLook look, double widthMm = 180, double heightMm = 40)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Draw(step, work, new PlanFacts(plan, []), look, widthMm, heightMm);
    }

    /// <summary>True for the operations whose works are drawn: cuts across the grain.</summary>
    public static bool Draws(Operation operation) =>
        operation is Operation.RoughCrosscut or Operation.CrosscutStrips or Operation.CrosscutBlanks;

    internal static Drawing Draw(Step step, Work work, PlanFacts facts, DrawingLook look, double widthMm, double heightMm)
    {
        var sizes = facts.Sizes;
        var input = work.In[0];
        var whole = Length.Sum(work.Out.Select(p => p.Length)) + work.Taken + (work.Kerf * work.Cuts);
        var across = facts.Before(step, input)?.Width ?? work.Out[0].Width;
        const double Left = 3;
        var scale = DrawingScale.Fit(whole, across, widthMm - (2 * Left), heightMm);
        var wood = new WoodFill(look, facts.Hatches);
        var pen = new Pen();
        var kerf = work.Kerf.IsZero ? "" : $" · kerf {sizes.Of(work.Kerf)}";
        var trim = work.TakenFirst.IsZero ? "" : $" · square the marked end first: {sizes.Of(work.TakenFirst)} off";
        var idWidth = pen.Text(0, 4.4, Typesetting.Shorten(input, 12, true, widthMm * 0.4), 12, true).RightMm + 3;
        pen.Text(idWidth, 4.4, Typesetting.Shorten($"{DrawingScale.Words(scale)}{kerf}{trim}", 8.5, false, widthMm - idWidth), 8.5);
        const double Top = 7.5;
        var height = across.Millimetres / scale;
        var all = new Frame(Left, Top, whole.Millimetres / scale, height);
        pen.Box(all, Ink.ThinDashed);
        // The marked end: a filled wedge, as it is drawn on the wood with a pencil.
        pen.Add(new Mark.Polygon([new(Left - 0.6, all.Middle.YMm), new(Left - 2.6, all.Middle.YMm - 1.4), new(Left - 2.6, all.Middle.YMm + 1.4)], null, Ink.Black));
        var at = work.TakenFirst;
        double lastRight = double.NegativeInfinity;
        var dimension = Top + height + 6.5;
        for (var i = 0; i < work.Out.Length; i++)
        {
            var piece = work.Out[i];
            var frame = new Frame(Left + (at.Millimetres / scale), Top, piece.Length.Millimetres / scale, height);
            Blank(pen, wood, facts, piece, frame, scale);
            var text = sizes.Of(piece.Length);
            if (Typesetting.WidthMm(text, 10, true) + 1.5 <= frame.WidthMm && frame.LeftMm > lastRight)
            {
                Dimension.Level(pen, frame.LeftMm, frame.RightMm, dimension, Top + height, text, 10);
                lastRight = frame.RightMm;
            }

            at += piece.Length + (i < work.Cuts ? work.Kerf : Length.Zero);
        }

        var summary = $"{input}, {sizes.About(whole)} long, from the marked end: " + string.Join("; ", work.Out.Select(p => $"{p.Id} {sizes.Of(p.Length)}")) + ".";
        return new(widthMm, dimension + 2, $"Crosscuts of {input}", summary, [new Mark.Group($"crosscuts {input}", pen.Marks)]);
    }

    private static void Blank(Pen pen, WoodFill wood, PlanFacts facts, Piece piece, Frame frame, int scale)
    {
        var inner = new Pen();
        var y = frame.BottomMm;
        foreach (var lane in piece.Lanes)
        {
            var lower = lane.Width.Millimetres / scale;
            wood.Fill(inner, new(frame.LeftMm, y - lower, frame.WidthMm, lower), facts.SpeciesOf(lane.Offcut), Ink.Thin);
            y -= lower;
        }

        inner.Box(frame, Ink.Medium);
        var size = new[] { 13.0, 11, 9, 7.5 }.FirstOrDefault(s => Typesetting.WidthMm(piece.Id, s, true) + 3 <= frame.WidthMm && FontAdvances.CapitalMm(s) + 1.6 <= frame.HeightMm);
        if (size > 0) inner.Plate(frame.Middle.XMm, frame.Middle.YMm, piece.Id, size, true, Side.Middle, Ink.White);
        pen.Add(new Mark.Group($"piece {piece.Id}", inner.Marks));
    }
}
