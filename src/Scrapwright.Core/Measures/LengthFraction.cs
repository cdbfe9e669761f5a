using System.Numerics;

namespace Scrapwright.Core.Measures;

/// <summary>A length as inches and a fraction in lowest terms, so that a drawing can set the fraction as a fraction.</summary>
/// <remarks>The fraction is below 1: a length just short of an inch that rounds up carries into <see cref="Whole"/>. <c>default</c> is not a fraction.</remarks>
public readonly record struct LengthFraction
{
    private LengthFraction(int sign, long whole, int numerator, int denominator, bool isExact)
    {
        Sign = sign;
        Whole = whole;
        Numerator = numerator;
        Denominator = denominator;
        IsExact = isExact;
    }

    /// <summary>−1, 0 or 1: the sign of what is shown; 0 where the length rounds to nothing.</summary>
    public int Sign { get; }

    /// <summary>Whole inches, without sign. [in]</summary>
    public long Whole { get; }

    /// <summary>The upper number of the fraction, without sign; 0 for no fraction.</summary>
    public int Numerator { get; }

    /// <summary>The lower number of the fraction, a power of two; 1 for no fraction.</summary>
    public int Denominator { get; }

    /// <summary>Whether what is shown is the length itself.</summary>
    public bool IsExact { get; }

    /// <summary>The mark next to a length.</summary>
    /// <param name="length">Any length, of either sign.</param>
    /// <param name="denominator">The finest mark: a power of two from 1 to 512.</param>
    /// <param name="rounding">Where a length between two marks goes.</param>
    /// <exception cref="ArgumentOutOfRangeException">The denominator is not such a power of two.</exception>
    public static LengthFraction Of(Length length, int denominator, Rounding rounding)
    {
        if (denominator is < 1 or > 512 || !BitOperations.IsPow2(denominator))
            throw new ArgumentOutOfRangeException(nameof(denominator), denominator, "A power of two from 1 to 512.");
        var step = Length.PicometresPerInch / denominator;
        var marks = (long)RoundedDivision.Divide(length.Picometres, step, rounding);
        var whole = Math.Abs(marks) / denominator;
        var numerator = (int)(Math.Abs(marks) % denominator);

        // A power of two shares with the numerator what the numerator's trailing zero bits say.
        var shift = BitOperations.TrailingZeroCount(numerator | denominator);
        return new(Math.Sign(marks), whole, numerator >> shift, denominator >> shift, length.Picometres % step == 0);
    }

    /// <summary>The number without a unit: <c>-1 3/8</c>, <c>3/8</c>, <c>2</c> or <c>0</c>.</summary>
    public override string ToString() => (Sign < 0 ? "-" : "") + Unsigned(Whole);

    /// <summary>The number without sign and unit, with other whole inches before the fraction.</summary>
    internal string Unsigned(long whole) => (whole, Numerator) switch
    {
        (_, 0) => $"{whole}",
        (0, _) => $"{Numerator}/{Denominator}",
        _ => $"{whole} {Numerator}/{Denominator}",
    };
}
