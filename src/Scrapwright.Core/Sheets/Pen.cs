using System.Collections.Immutable;

namespace Scrapwright.Core.Sheets;

/// <summary>Collects marks while a sheet or drawing is composed.</summary>
internal sealed class Pen
{
    private const double MmPerPt = 25.4 / 72;
    private readonly ImmutableArray<Mark>.Builder marks = ImmutableArray.CreateBuilder<Mark>();

    internal ImmutableArray<Mark> Marks => marks.ToImmutable();

    internal static double LineMm(double sizePt) => sizePt * 1.25 * MmPerPt;

    internal void Add(Mark mark) => marks.Add(mark);

    internal void AddAll(IEnumerable<Mark> more) => marks.AddRange(more);

    internal void Line(double fromXMm, double fromYMm, double toXMm, double toYMm, Ink ink) =>
        marks.Add(new Mark.Line(new(fromXMm, fromYMm), new(toXMm, toYMm), ink));

    internal void Box(Frame frame, Ink? ink, string? fill = null) => marks.Add(new Mark.Rectangle(frame, ink, fill));

    /// <summary>Text on one line; gives its bounds. The side says which end of the text stands at x.</summary>
    internal Frame Text(double xMm, double footMm, string text, double sizePt, bool bold = false, Side side = Side.Left, string colour = Ink.Black)
    {
        var runs = Typesetting.Runs(text, sizePt);
        var mark = new Mark.Text(new(xMm, footMm), runs, bold, colour);
        var left = side switch { Side.Left => xMm, Side.Middle => xMm - (mark.WidthMm / 2), _ => xMm - mark.WidthMm };
        var placed = mark with { Foot = new(left, footMm) };
        if (placed.Letters.Trim().Length > 0) marks.Add(placed);
        return placed.Bounds;
    }

    /// <summary>Text on as many lines as it needs; gives the height used.</summary>
    internal double Paragraph(double xMm, double topMm, double widthMm, string text, double sizePt, bool bold = false)
    {
        var lines = Typesetting.Wrap(text, sizePt, bold, widthMm);
        for (var i = 0; i < lines.Length; i++)
            Text(xMm, topMm + FontAdvances.AscentMm(sizePt) + (i * LineMm(sizePt)), lines[i], sizePt, bold);
        return lines.Length * LineMm(sizePt);
    }

    /// <summary>Text in the middle of a white or coloured plate, so that it reads on a hatch.</summary>
    internal Frame Plate(double xMm, double middleYMm, string text, double sizePt, bool bold, Side side, string? plate, string colour = Ink.Black)
    {
        var width = Typesetting.WidthMm(text, sizePt, bold);
        var left = side switch { Side.Left => xMm, Side.Middle => xMm - (width / 2), _ => xMm - width };
        var height = FontAdvances.CapitalMm(sizePt) + 1.2;
        if (plate is not null) Box(new(left - 0.8, middleYMm - (height / 2), width + 1.6, height), null, plate);
        return Text(left, middleYMm + (FontAdvances.CapitalMm(sizePt) / 2), text, sizePt, bold, Side.Left, colour);
    }

    internal void TickBox(double xMm, double topMm, double sizeMm = 4.5) => Box(new(xMm, topMm, sizeMm, sizeMm), Ink.Medium);

    /// <summary>A triangle with a bar and a dot: mind this. Our own, after the general warning sign of ISO 7010 in outline only.</summary>
    internal void Warning(double xMm, double topMm, double sizeMm)
    {
        marks.Add(new Mark.Polygon([new(xMm, topMm + sizeMm), new(xMm + (sizeMm / 2), topMm), new(xMm + sizeMm, topMm + sizeMm)], Ink.Medium, Ink.White));
        var x = xMm + (sizeMm / 2);
        Line(x, topMm + (sizeMm * 0.38), x, topMm + (sizeMm * 0.68), Ink.Medium with { WidthMm = 0.5 });
        marks.Add(new Mark.Circle(new(x, topMm + (sizeMm * 0.83)), sizeMm * 0.06, null, Ink.Black));
    }
}
