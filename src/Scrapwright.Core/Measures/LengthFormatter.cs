using System.Globalization;

namespace Scrapwright.Core.Measures;

/// <summary>Writes lengths for people. Exact text is <see cref="Length.ToExactText"/>.</summary>
public static class LengthFormatter
{
    private const string ApproximateMark = "≈ ";

    /// <summary>The length with its unit: <c>1 3/8 in</c>, <c>1 ft 2 3/8 in</c>, <c>9.5 mm</c>, <c>≈ 9.5 mm</c>.</summary>
    public static string Format(Length length, LengthStyle style)
    {
        ArgumentNullException.ThrowIfNull(style);
        return style switch
        {
            { Unit: LengthUnit.Millimetre } => FormatNumber(length, style) + " mm",
            { Feet: true } => FormatFeet(length, style),
            _ => FormatNumber(length, style) + " in",
        };
    }

    /// <summary>The length without its unit, for a table whose head names the unit; in inches even if the style asks for feet.</summary>
    public static string FormatNumber(Length length, LengthStyle style)
    {
        ArgumentNullException.ThrowIfNull(style);
        if (style.Unit == LengthUnit.Millimetre) return FormatMillimetres(length, style);
        var fraction = FractionOf(length, style);
        return Mark(fraction.IsExact, style) + fraction;
    }

    private static LengthFraction FractionOf(Length length, LengthStyle style) => LengthFraction.Of(length, style.Denominator, style.Rounding);

    private static string Mark(bool isExact, LengthStyle style) => style.Approximate && !isExact ? ApproximateMark : "";

    private static string FormatFeet(Length length, LengthStyle style)
    {
        var fraction = FractionOf(length, style);
        var (feet, inches) = Math.DivRem(fraction.Whole, 12);
        var sign = Mark(fraction.IsExact, style) + (fraction.Sign < 0 ? "-" : "");
        return (feet, inches, fraction.Numerator) switch
        {
            (0, _, _) => $"{sign}{fraction.Unsigned(inches)} in",
            (_, 0, 0) => $"{sign}{feet} ft",
            _ => $"{sign}{feet} ft {fraction.Unsigned(inches)} in",
        };
    }

    private static string FormatMillimetres(Length length, LengthStyle style)
    {
        var marksPerMillimetre = style.Decimals switch { 0 => 1, 1 => 10, 2 => 100, _ => 1000 };
        var step = Length.PicometresPerMillimetre / marksPerMillimetre;
        var marks = (long)RoundedDivision.Divide(length.Picometres, step, style.Rounding);
        var number = ((decimal)marks / marksPerMillimetre).ToString("0.###", CultureInfo.InvariantCulture);
        return Mark(length.Picometres % step == 0, style) + number;
    }
}
