namespace Scrapwright.Core.Measures;

/// <summary>Whole-number division with a stated rounding direction.</summary>
internal static class RoundedDivision
{
    /// <summary>The rounded quotient; the divisor must be positive.</summary>
    public static Int128 Divide(Int128 dividend, Int128 divisor, Rounding rounding)
    {
        var (floor, rest) = FloorAndRemainder(dividend, divisor);
        return rounding switch
        {
            Rounding.Down => floor,
            Rounding.Up => rest == 0 ? floor : floor + 1,
            Rounding.Nearest => IsAboveHalf(rest, divisor, dividend < 0) ? floor + 1 : floor,
            _ => throw new ArgumentOutOfRangeException(nameof(rounding), rounding, "Down, Up or Nearest."),
        };
    }

    private static (Int128 Floor, Int128 Remainder) FloorAndRemainder(Int128 dividend, Int128 divisor)
    {
        var (quotient, remainder) = Int128.DivRem(dividend, divisor);
        return remainder < 0 ? (quotient - 1, remainder + divisor) : (quotient, remainder);
    }

    // Compared without doubling, so that no divisor overflows. A tie goes up for positive values and stays on the floor for negative ones.
    private static bool IsAboveHalf(Int128 rest, Int128 divisor, bool negative)
    {
        var other = divisor - rest;
        return negative ? rest > other : rest >= other;
    }
}
