using System.Globalization;
using System.Numerics;

namespace Scrapwright.Core.Measures;

public readonly partial record struct Length
{
    /// <summary>The exact length with its unit, such as <c>1 3/8 in</c> or <c>9.525 mm</c>; the parser reads it back to the same length.</summary>
    /// <remarks>
    /// Millimetres are an exact decimal. Inches are a reduced fraction if its denominator is a power of two up to 512, else an exact
    /// decimal if there is one, else a reduced fraction (1 mm is <c>5/127 in</c>).
    /// </remarks>
    public string ToExactText(LengthUnit unit) => unit switch
    {
        LengthUnit.Inch => (ExactInchNumber() ?? ExactInchFraction()) + " in",
        LengthUnit.Millimetre => ExactMillimetreNumber() + " mm",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "Inch or Millimetre."),
    };

    /// <summary>The length as a person wants to see it, such as <c>1 3/8 in</c> or <c>≈ 9.5 mm</c>.</summary>
    public string ToText(LengthStyle style) => LengthFormatter.Format(this, style);

    internal string ExactMillimetreNumber() =>
        ((decimal)Picometres / PicometresPerMillimetre).ToString("0.#########", CultureInfo.InvariantCulture);

    /// <summary>A fraction of a power of two or a decimal, or null where inches have neither.</summary>
    internal string? ExactInchNumber()
    {
        if (BitOperations.IsPow2(PicometresPerInch / GreatestCommonDivisor(PicometresPerInch, Math.Abs(Picometres % PicometresPerInch)))) return ExactInchFraction();

        // An inch is 127 · 200,000,000 pm; without the prime 127 the rest divides a power of ten.
        var (units, rest) = Math.DivRem(Picometres, 127);
        return rest == 0 ? (units / 200_000_000m).ToString("0.#########", CultureInfo.InvariantCulture) : null;
    }

    private string ExactInchFraction() => ReducedFractionText(Picometres, PicometresPerInch);

    /// <summary>A whole number and a fraction in lowest terms, such as <c>-1 3/8</c>, <c>3/8</c> or <c>2</c>.</summary>
    internal static string ReducedFractionText(Int128 numerator, long denominator)
    {
        var sign = numerator < 0 ? "-" : "";
        var (whole, rest) = Int128.DivRem(Int128.Abs(numerator), denominator);
        if (rest == 0) return $"{sign}{whole}";
        var divisor = GreatestCommonDivisor(denominator, (long)rest);
        var fraction = $"{(long)rest / divisor}/{denominator / divisor}";
        return whole == 0 ? sign + fraction : $"{sign}{whole} {fraction}";
    }

    private static long GreatestCommonDivisor(long a, long b)
    {
        while (b != 0) (a, b) = (b, a % b);
        return a;
    }
}
