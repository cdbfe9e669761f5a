using System.Numerics;

namespace Scrapwright.Core.Measures;

/// <summary>How a length is shown to a person.</summary>
public sealed record LengthStyle
{
    /// <summary>Inches to the nearest 1/64, such as <c>1 3/8 in</c>.</summary>
    public static LengthStyle Inches { get; } = new();

    /// <summary>Millimetres to the nearest tenth, such as <c>9.5 mm</c>.</summary>
    public static LengthStyle Millimetres { get; } = new() { Unit = LengthUnit.Millimetre };

    /// <summary>The unit shown; inches unless said otherwise.</summary>
    public LengthUnit Unit { get; init; } = LengthUnit.Inch;

    /// <summary>The finest fraction of an inch shown: 2, 4, 8, 16, 32, 64 or 128; 64 unless said otherwise.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Another number.</exception>
    public int Denominator
    {
        get;
        init => field = value is >= 2 and <= 128 && BitOperations.IsPow2(value)
            ? value
            : throw new ArgumentOutOfRangeException(nameof(Denominator), value, "2, 4, 8, 16, 32, 64 or 128.");
    } = 64;

    /// <summary>The most decimals of a millimetre shown, 0 to 3; 1 unless said otherwise. Zeros at the end are left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Another number.</exception>
    public int Decimals
    {
        get;
        init => field = value is >= 0 and <= 3 ? value : throw new ArgumentOutOfRangeException(nameof(Decimals), value, "0 to 3.");
    } = 1;

    /// <summary>Distance between two of the finest marks shown: a fraction of an inch, or the last decimal of a millimetre.</summary>
    public Length FinestMark => Unit == LengthUnit.Inch ? Length.FromInches(1, Denominator) : Length.FromMillimetres(1).Divide((long)Math.Pow(10, Decimals), Rounding.Nearest);

    /// <summary>Where a length between two marks goes; to the nearest unless said otherwise.</summary>
    public Rounding Rounding { get; init; } = Rounding.Nearest;

    /// <summary>Whether a shown value that is not exact has <c>≈</c> before it; yes unless said otherwise.</summary>
    public bool Approximate { get; init; } = true;

    /// <summary>Whether 12 inches and more are shown in feet and inches; no unless said otherwise.</summary>
    public bool Feet { get; init; }
}
