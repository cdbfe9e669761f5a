using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Fits;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Sheets;

/// <summary>
/// The clearance of a fit over the year: months from left to right, a hatched band from the tightest it can be (heavy line with dots) to the loosest,
/// the least wanted as a dashed line, the most wanted as another, and a heavy line at nothing left.
/// </summary>
public static class FitPlot
{
    internal const double LeftMm = 14;
    internal const double RightMm = 19;
    private const double TopMm = 7;
    private const double FootMm = 5;
    private const double TextPt = 8;

    /// <summary>Draws one fit.</summary>
    /// <param name="season">The fit through the year.</param>
    /// <param name="title">What it is: Stand, between the front rods.</param>
    /// <param name="shop">The shop, for its unit.</param>
    /// <param name="widthMm">Width of the drawing, 80 or more. [mm]</param>
    /// <param name="heightMm">Height of the drawing, 35 or more. [mm]</param>
    public static Drawing Draw(SeasonFit season, string title, Shop shop, double widthMm = 120, double heightMm = 55)
    {
        ArgumentNullException.ThrowIfNull(season);
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(shop);
        var inch = shop.Unit == LengthUnit.Inch;
        var scale = FitScale.For(season, inch);
        var frame = new Frame(LeftMm, TopMm, widthMm - LeftMm - RightMm, heightMm - TopMm - FootMm);
        double Y(Length clearance) => frame.BottomMm - ((FitScale.Value(clearance, inch) - scale.Low) / (scale.High - scale.Low) * frame.HeightMm);
        var pen = new Pen();
        var unit = $"clearance, {(inch ? "in" : "mm")}";
        var unitLeft = pen.Text(frame.RightMm, 4.2, unit, TextPt, false, Side.Right).LeftMm;
        pen.Text(0, 4.2, Typesetting.Shorten(title, 10, true, unitLeft - 3), 10, true);
        Axes(pen, frame, scale, widthMm);
        var xs = Enumerable.Range(0, 12).Select(i => MonthMm(i, widthMm)).ToArray();
        var tight = season.Months.Select((m, i) => new Spot(xs[i], Y(m.Clearance))).ToArray();
        var loose = season.Months.Select((m, i) => new Spot(xs[i], Y(m.MostClearance))).ToArray();
        Band(pen, tight, loose);
        if (scale.Low < 0) pen.Line(frame.LeftMm, Y(Length.Zero), frame.RightMm, Y(Length.Zero), Ink.Thick);
        Limits(pen, season, shop, frame, Y);
        pen.Box(frame, Ink.Fine);
        return new(widthMm, heightMm, title, Summary(season, title, shop), [new Mark.Group("fit", pen.Marks)]);
    }

    /// <summary>Middle of a month's column, from 0 for January. [mm]</summary>
    internal static double MonthMm(int month, double widthMm) => LeftMm + ((month + 0.5) * (widthMm - LeftMm - RightMm) / 12);

    private static void Axes(Pen pen, Frame frame, FitScale scale, double widthMm)
    {
        foreach (var (value, text) in scale.Marks())
        {
            var y = frame.BottomMm - ((value - scale.Low) / (scale.High - scale.Low) * frame.HeightMm);
            pen.Line(frame.LeftMm - 1.2, y, frame.RightMm, y, Ink.Thin);
            pen.Text(frame.LeftMm - 2, y + (FontAdvances.CapitalMm(TextPt) / 2), text, TextPt, false, Side.Right);
        }

        for (var month = 0; month < 12; month++)
            pen.Text(MonthMm(month, widthMm), frame.BottomMm + 3.8, FitWords.Month(month + 1)[..1], TextPt, false, Side.Middle);
    }

    private static void Band(Pen pen, Spot[] tight, Spot[] loose)
    {
        const double StepMm = 1.5;
        var strokes = ImmutableArray.CreateBuilder<Stroke>();
        for (var x = tight[0].XMm + StepMm; x < tight[^1].XMm; x += StepMm)
        {
            var (upper, lower) = (At(loose, x), At(tight, x));
            if (lower - upper > 0.3) strokes.Add(new(new(x, upper), new(x, lower)));
        }

        if (strokes.Count > 0) pen.Add(new Mark.Hatch(strokes.ToImmutable(), Ink.Thin));
        for (var i = 1; i < tight.Length; i++)
        {
            pen.Add(new Mark.Line(loose[i - 1], loose[i], Ink.Medium));
            pen.Add(new Mark.Line(tight[i - 1], tight[i], Ink.Thick));
        }

        foreach (var spot in tight) pen.Add(new Mark.Circle(spot, 0.9, null, Ink.Black));
    }

    private static double At(Spot[] line, double xMm)
    {
        var after = Array.FindIndex(line, s => s.XMm >= xMm);
        var (from, to) = (line[after - 1], line[after]);
        return from.YMm + ((to.YMm - from.YMm) * (xMm - from.XMm) / (to.XMm - from.XMm));
    }

    // Named at the right, outside the frame, where no curve runs; moved apart where the two lines lie close.
    private static void Limits(Pen pen, SeasonFit season, Shop shop, Frame frame, Func<Length, double> y)
    {
        const double ApartMm = 3.4;
        var least = y(season.Least);
        var most = season.Most is { } limit ? y(limit) : double.NegativeInfinity;
        var close = Math.Max(0, ApartMm - (least - most)) / 2;
        Limit(pen, frame, least, Math.Min(least + close, frame.BottomMm - 1), $"least {Number(season.Least, shop)}");
        if (season.Most is { } loose) Limit(pen, frame, most, Math.Min(most - close, frame.BottomMm - 1 - ApartMm), $"most {Number(loose, shop)}");
    }

    private static void Limit(Pen pen, Frame frame, double lineMm, double textMm, string text)
    {
        pen.Line(frame.LeftMm, lineMm, frame.RightMm, lineMm, new Ink(0.5, Ink.Black, true));
        pen.Text(frame.RightMm + 1.2, textMm + (FontAdvances.CapitalMm(TextPt) / 2), text, TextPt, true);
    }

    private static string Number(Length length, Shop shop) => FitWords.Fine(length, shop).Split(' ')[0];

    private static string Summary(SeasonFit season, string title, Shop shop)
    {
        var months = season.Months.Select(m => $"{FitWords.Month(m.Month)} {FitWords.Fine(m.Clearance, shop, Rounding.Down)} to {FitWords.Fine(m.MostClearance, shop, Rounding.Up)}");
        return string.Create(CultureInfo.InvariantCulture, $"{title}. {FitWords.Verdict(season, shop)} Clearance by month: {string.Join("; ", months)}.");
    }
}
