using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Sheets;

/// <summary>A board glued face to face, seen from its lower edge: both offcuts with their labels, marked ends flush at the left, and where the board ends. Lengths are true to scale, thicknesses are not.</summary>
internal static class FacedDrawing
{
    private const double HalfMm = 9;
    private const double TopMm = 6;

    internal static Drawing Draw(FacedBoard board, PlanFacts facts, double widthMm)
    {
        var (upper, lower) = (LengthOf(facts, board.Upper, board.Length), LengthOf(facts, board.Lower, board.Length));
        var longest = Length.Max(upper, lower);
        double Along(Length length) => length.Picometres / (double)longest.Picometres * widthMm;
        var pen = new Pen();
        pen.Text(0, 4, "marked ends", 8);
        pen.Text(widthMm, 4, "seen from the lower edge; thickness not to scale", 8, false, Side.Right);
        Half(pen, facts, board.Upper, board.UpperThickness, new Frame(0, TopMm, Along(upper), HalfMm));
        Half(pen, facts, board.Lower, board.LowerThickness, new Frame(0, TopMm + HalfMm, Along(lower), HalfMm));
        var bottom = TopMm + (2 * HalfMm);
        pen.Line(0, TopMm + HalfMm, Along(board.Length), TopMm + HalfMm, Ink.Medium);
        if (longest > board.Length) pen.Line(Along(board.Length), TopMm - 1.5, Along(board.Length), bottom + 1.5, Ink.ThinDashed);
        Dimension.Level(pen, 0, Along(board.Length), bottom + 7, bottom, facts.Sizes.Of(board.Length), 10);
        var summary = $"{board.Upper} on {board.Lower}, {facts.Sizes.Of(board.Length)} from the marked end glued.";
        return new(widthMm, bottom + 10, $"Board {board.Label}", summary, [new Mark.Group($"board {board.Label}", pen.Marks)]);
    }

    private static Length LengthOf(PlanFacts facts, string offcut, Length least) => facts.Index.Offcut(offcut)?.Length ?? least;

    private static void Half(Pen pen, PlanFacts facts, string label, Length thickness, Frame frame)
    {
        facts.Hatches.Fill(pen, frame, facts.SpeciesOf(label));
        pen.Box(frame, Ink.Medium);
        pen.Plate(Math.Min(frame.Middle.XMm, frame.LeftMm + 40), frame.Middle.YMm, $"{label} · {facts.Sizes.Of(thickness)} once flat", 11, true, Side.Middle, Ink.White, Ink.Black);
    }
}
