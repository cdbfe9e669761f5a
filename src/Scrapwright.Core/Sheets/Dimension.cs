namespace Scrapwright.Core.Sheets;

/// <summary>
/// Dimension lines after ISO 129-1 and ASME Y14.5: thin lines, extension lines that do not touch the part, slender filled arrowheads three times as long
/// as wide, oblique strokes where there is no room for arrowheads, every text upright.
/// </summary>
internal static class Dimension
{
    private const double ArrowMm = 2.4;
    private const double GapMm = 0.8;
    private const double PastMm = 1.2;

    /// <summary>A level dimension between two sides, at height y; extension lines come from the part at the given height. Gives the bounds of its text.</summary>
    internal static Frame Level(Pen pen, double leftMm, double rightMm, double yMm, double partMm, string text, double sizePt)
    {
        Extension(pen, leftMm, partMm, leftMm, yMm);
        Extension(pen, rightMm, partMm, rightMm, yMm);
        Arrows(pen, new(leftMm, yMm), new(rightMm, yMm));
        var width = Typesetting.WidthMm(text, sizePt, bold: true);
        if (width + 1.5 <= rightMm - leftMm)
            return pen.Text((leftMm + rightMm) / 2, yMm - 0.9 - (0.24 * sizePt * 25.4 / 72 * 0.3), text, sizePt, true, Side.Middle);
        pen.Line(rightMm, yMm, rightMm + 3, yMm, Ink.Thin);
        return pen.Text(rightMm + 3.6, yMm + (FontAdvances.CapitalMm(sizePt) / 2), text, sizePt, true);
    }

    /// <summary>An upright dimension between top and bottom, at x, its text to the right of it. Gives the bounds of its text.</summary>
    internal static Frame Upright(Pen pen, double topMm, double bottomMm, double xMm, double partMm, string text, double sizePt, Side side = Side.Left)
    {
        Extension(pen, partMm, topMm, xMm, topMm);
        Extension(pen, partMm, bottomMm, xMm, bottomMm);
        Arrows(pen, new(xMm, topMm), new(xMm, bottomMm));
        var textX = side == Side.Left ? xMm + 1.4 : xMm - 1.4;
        return pen.Text(textX, ((topMm + bottomMm) / 2) + (FontAdvances.CapitalMm(sizePt) / 2), text, sizePt, true, side);
    }

    private static void Extension(Pen pen, double fromXMm, double fromYMm, double toXMm, double toYMm)
    {
        var (dx, dy) = (Math.Sign(toXMm - fromXMm), Math.Sign(toYMm - fromYMm));
        if (dx == 0 && dy == 0) return;
        pen.Line(fromXMm + (dx * GapMm), fromYMm + (dy * GapMm), toXMm + (dx * PastMm), toYMm + (dy * PastMm), Ink.Thin);
    }

    private static void Arrows(Pen pen, Spot from, Spot to)
    {
        pen.Line(from.XMm, from.YMm, to.XMm, to.YMm, Ink.Thin);
        var (dx, dy) = (to.XMm - from.XMm, to.YMm - from.YMm);
        var length = Math.Abs(dx) + Math.Abs(dy);
        if (length < 2.5 * ArrowMm)
        {
            foreach (var end in new[] { from, to })
                pen.Line(end.XMm - 0.9, end.YMm + 0.9, end.XMm + 0.9, end.YMm - 0.9, Ink.Medium);
            return;
        }

        Arrow(pen, from, dx / length, dy / length);
        Arrow(pen, to, -dx / length, -dy / length);
    }

    private static void Arrow(Pen pen, Spot tip, double alongX, double alongY)
    {
        var (backX, backY) = (tip.XMm + (ArrowMm * alongX), tip.YMm + (ArrowMm * alongY));
        var half = ArrowMm / 6;
        pen.Add(new Mark.Polygon([tip, new(backX - (half * alongY), backY + (half * alongX)), new(backX + (half * alongY), backY - (half * alongX))], null, Ink.Black));
    }
}
