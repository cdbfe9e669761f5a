using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Sheets;

/// <summary>How likely each size is before the last cut: a hill over what is left in hand, a heavy line where the size is just met, and what lies short of it hatched.</summary>
public static class OddsPlot
{
    private const double TextPt = 7.5;
    private const double FootMm = 4;

    /// <summary>Draws a curve.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="shop">The shop, for its unit.</param>
    /// <param name="widthMm">Width of the drawing, 40 or more. [mm]</param>
    /// <param name="heightMm">Height of the drawing, 12 or more. [mm]</param>
    public static Drawing Draw(OddsCurve curve, Shop shop, double widthMm = 70, double heightMm = 20)
    {
        ArgumentNullException.ThrowIfNull(curve);
        ArgumentNullException.ThrowIfNull(shop);
        var frame = new Frame(0.4, 0.6, widthMm - 0.8, heightMm - FootMm - 0.6);

        // The line where the size is just met is always in the picture.
        var low = Math.Min(curve.OverMm[0], -0.1 * (curve.OverMm[^1] - curve.OverMm[0]));
        var high = Math.Max(curve.OverMm[^1], 0.1 * (curve.OverMm[^1] - curve.OverMm[0]));
        double X(double overMm) => frame.LeftMm + ((overMm - low) / (high - low) * frame.WidthMm);
        double Y(double height) => frame.BottomMm - (height * (frame.HeightMm - 1));
        var pen = new Pen();
        var hill = curve.OverMm.Zip(curve.Heights, (over, height) => new Spot(X(over), Y(height))).ToArray();
        Short(pen, hill, X(0), frame.BottomMm);
        for (var i = 1; i < hill.Length; i++) pen.Add(new Mark.Line(hill[i - 1], hill[i], Ink.Medium));
        pen.Line(frame.LeftMm, frame.BottomMm, frame.RightMm, frame.BottomMm, Ink.Fine);
        pen.Line(X(0), frame.BottomMm + 0.8, X(0), frame.TopMm, Ink.Thick);
        Words(pen, curve, shop, X(0), frame, heightMm);
        var title = $"{Name(curve)} before the last {(curve.Size == SizeKind.Width ? "trim" : "planing")}";
        return new(widthMm, heightMm, title, Summary(curve, title, shop), [new Mark.Group("odds", pen.Marks)]);
    }

    private static void Short(Pen pen, Spot[] hill, double lineMm, double footMm)
    {
        const double StepMm = 0.9;
        var strokes = ImmutableArray.CreateBuilder<Stroke>();
        for (var x = hill[0].XMm + StepMm; x < Math.Min(lineMm, hill[^1].XMm); x += StepMm)
        {
            var after = Array.FindIndex(hill, s => s.XMm >= x);
            var (from, to) = (hill[after - 1], hill[after]);
            var top = from.YMm + ((to.YMm - from.YMm) * (x - from.XMm) / (to.XMm - from.XMm));
            if (footMm - top > 0.1) strokes.Add(new(new(x, top), new(x, footMm)));
        }

        if (strokes.Count > 0) pen.Add(new Mark.Hatch(strokes.ToImmutable(), Ink.Fine));
    }

    // On the side of the line that has room.
    private static void Words(Pen pen, OddsCurve curve, Shop shop, double lineMm, Frame frame, double heightMm)
    {
        var side = lineMm - frame.LeftMm < frame.WidthMm / 2 ? Side.Left : Side.Right;
        pen.Text(side == Side.Left ? frame.LeftMm : frame.RightMm, heightMm - 0.8, Typesetting.Shorten(Foot(curve, shop), TextPt, false, frame.WidthMm), TextPt, false, side);
    }

    private static string Foot(OddsCurve curve, Shop shop) =>
        $"short of {Name(curve).ToLowerInvariant()} {Share(curve)} · most likely {InHand(curve, shop)}";

    private static string InHand(OddsCurve curve, Shop shop)
    {
        var likely = curve.OverMm[curve.Heights.IndexOf(curve.Heights.Max())];
        var size = LengthFormatter.Format(
            Length.FromMillimetresRounded(Math.Abs(likely)), new LengthStyle { Unit = shop.Unit, Denominator = 64, Rounding = Rounding.Down });
        return likely >= 0 ? $"{size} over" : $"{size} short";
    }

    private static string Share(OddsCurve curve) => curve.BelowShare < 0.001 ? "below 0.1 %"
        : string.Create(CultureInfo.InvariantCulture, $"{curve.BelowShare * 100:0.0} %");

    private static string Name(OddsCurve curve) => curve.Size == SizeKind.Width ? "Width" : "Thickness";

    private static string Summary(OddsCurve curve, string title, Shop shop) => $"{title}: {Foot(curve, shop)}.";
}
