using System.Globalization;
using Scrapwright.Core.Fits;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Sheets;

/// <summary>The upright scale of a fit's plot: from nothing left, or below, to above the loosest, in steps a calliper reads.</summary>
internal sealed record FitScale(double Low, double High, double Step, string Format)
{
    private const int MostSteps = 5;

    internal static FitScale For(SeasonFit season, bool inch)
    {
        var low = Math.Min(0, season.Months.Min(m => Value(m.Clearance, inch)));
        var high = season.Months.Max(m => Value(m.MostClearance, inch));
        high = Math.Max(Math.Max(high, Value(season.Least, inch)), season.Most is { } most ? Value(most, inch) : 0);
        // Room above the highest line for its text.
        var span = Math.Max((high - low) * 1.18, inch ? 0.004 : 0.1);
        var step = Steps(inch).First(s => span / s <= MostSteps);
        var from = Math.Floor((low / step) + 1e-9) * step;
        return new(from, low + span, step, inch ? (step < 0.01 ? "0.000" : "0.00") : step < 1 ? "0.0" : "0");
    }

    internal static double Value(Length length, bool inch) => inch ? length.Inches : length.Millimetres;

    internal IEnumerable<(double Value, string Text)> Marks()
    {
        var first = (int)Math.Round(Low / Step);
        for (var i = first; i * Step <= High + 1e-9; i++) yield return (i * Step, (i * Step).ToString(Format, CultureInfo.InvariantCulture).Replace('-', '−'));
    }

    // 1, 2, 5, 10 …: inches from a thousandth, millimetres from a twentieth.
    private static IEnumerable<double> Steps(bool inch)
    {
        for (var decade = inch ? 0.001 : 0.1; ; decade *= 10)
        {
            yield return decade;
            yield return decade * 2;
            yield return decade * 5;
        }
    }
}
