using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans.Chances;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Sheets;

/// <summary>
/// At which width a panel lands once its outer edges are clean: a bell over the rule's marks, the width it needs as a dashed line, what falls short of it hatched.
/// Reads without colour.
/// </summary>
public static class WidthPlot
{
    private const double TextPt = 7.5;
    private const double TopMm = 6.5;
    private const double FootMm = 5.5;
    private const double Reach = 3.2;

    /// <summary>A needed width further away than so many deviations stands at the edge, with a mark.</summary>
    private const double Far = 7;

    /// <summary>Draws the plot of one panel.</summary>
    /// <param name="panel">The panel's chances.</param>
    /// <param name="shop">The shop, for its unit and marks.</param>
    /// <param name="widthMm">Width of the drawing, 60 or more. [mm]</param>
    /// <param name="heightMm">Height of the drawing, 22 or more. [mm]</param>
    public static Drawing Draw(PanelChance panel, Shop shop, double widthMm = 80, double heightMm = 30)
    {
        ArgumentNullException.ThrowIfNull(panel);
        ArgumentNullException.ThrowIfNull(shop);
        var sizes = new Sizes(shop);
        var frame = new Frame(0.5, TopMm, widthMm - 1, heightMm - TopMm - FootMm);
        var spread = Math.Max(panel.WidthSpread.Millimetres, 0.02);
        var middle = panel.Width.Millimetres;
        var needed = Math.Clamp(panel.NeededWidth.Millimetres, middle - (Far * spread), middle + (Far * spread));
        var low = Math.Min(needed, middle - (Reach * spread)) - (0.4 * spread);
        var high = Math.Max(needed, middle + (Reach * spread)) + (0.4 * spread);
        double X(double mm) => frame.LeftMm + ((mm - low) / (high - low) * frame.WidthMm);
        double Y(double mm) => frame.BottomMm - (Math.Exp(-Math.Pow((mm - middle) / spread, 2) / 2) * (frame.HeightMm - 1));
        var pen = new Pen();
        Marks(pen, shop, frame, low, high, X);
        Short(pen, frame, low, Math.Min(needed, high), X, Y);
        Bell(pen, middle - (Reach * 1.1 * spread), middle + (Reach * 1.1 * spread), X, Y);
        pen.Line(frame.LeftMm, frame.BottomMm, frame.RightMm, frame.BottomMm, Ink.Medium);
        pen.Line(X(needed), frame.TopMm - 1, X(needed), frame.BottomMm + 1, new Ink(0.5, Ink.Black, true));
        pen.Line(X(middle), Y(middle), X(middle), frame.BottomMm, Ink.Thin);
        var beyond = panel.NeededWidth.Millimetres < needed ? "‹ " : panel.NeededWidth.Millimetres > needed ? "› " : "";
        Words(pen, sizes, panel, frame, beyond, X(needed), X(middle));
        return new(widthMm, heightMm, $"Width of {panel.GlueUp}", Summary(panel, sizes), [new Mark.Group("odds", pen.Marks)]);
    }

    private static string Summary(PanelChance panel, Sizes sizes)
    {
        var perMille = SizeChances.ToPerMille(panel.Sizes.Width);
        return $"{panel.GlueUp} needs {sizes.About(panel.NeededWidth)} of width. It lands at {sizes.About(panel.Width)} on average, 19 times in 20 between "
            + $"{sizes.About(panel.Width - (panel.WidthSpread * 2))} and {sizes.About(panel.Width + (panel.WidthSpread * 2))}. It is wide enough {ChanceWords.Both(perMille)}.";
    }

    /// <summary>Marks of the rule below the line: sixteenths or millimetres, fewer where they would run together.</summary>
    private static void Marks(Pen pen, Shop shop, Frame frame, double lowMm, double highMm, Func<double, double> x)
    {
        var step = shop.Unit == LengthUnit.Inch ? 25.4 / 16 : 1.0;
        while ((highMm - lowMm) / step > 40)
        {
            step *= 2;
        }

        for (var at = Math.Ceiling(lowMm / step) * step; at <= highMm; at += step)
        {
            pen.Line(x(at), frame.BottomMm, x(at), frame.BottomMm + 1, Ink.Thin);
        }
    }

    private static void Short(Pen pen, Frame frame, double lowMm, double neededMm, Func<double, double> x, Func<double, double> y)
    {
        const double StepMm = 0.9;
        var strokes = ImmutableArray.CreateBuilder<Stroke>();
        var (left, right) = (x(lowMm), x(neededMm));
        for (var at = left; at < right; at += StepMm)
        {
            var top = y(lowMm + ((neededMm - lowMm) * (at - left) / (right - left)));
            if (frame.BottomMm - top > 0.2)
            {
                strokes.Add(new(new(at, frame.BottomMm), new(at, top)));
            }
        }

        if (strokes.Count > 0)
        {
            pen.Add(new Mark.Hatch(strokes.ToImmutable(), Ink.Fine));
        }
    }

    private static void Bell(Pen pen, double lowMm, double highMm, Func<double, double> x, Func<double, double> y)
    {
        const int Pieces = 60;
        for (var i = 0; i < Pieces; i++)
        {
            var (from, to) = (lowMm + ((highMm - lowMm) * i / Pieces), lowMm + ((highMm - lowMm) * (i + 1) / Pieces));
            pen.Add(new Mark.Line(new(x(from), y(from)), new(x(to), y(to)), Ink.Medium));
        }
    }

    /// <summary>Needed above its line, expected below the middle of the bell; each kept inside the drawing.</summary>
    private static void Words(Pen pen, Sizes sizes, PanelChance panel, Frame frame, string beyond, double neededMm, double middleMm)
    {
        Inside(pen, frame, neededMm, TopMm - 2.2, $"{beyond}needs {sizes.About(panel.NeededWidth)}", true);
        Inside(pen, frame, middleMm, frame.BottomMm + 4.4, $"lands at about {sizes.About(panel.Width)}", false);
    }

    private static void Inside(Pen pen, Frame frame, double middleMm, double footMm, string text, bool bold)
    {
        var half = Typesetting.WidthMm(text, TextPt, bold) / 2;
        pen.Text(Math.Clamp(middleMm, frame.LeftMm + half, Math.Max(frame.LeftMm + half, frame.RightMm - half)), footMm, text, TextPt, bold, Side.Middle);
    }
}
