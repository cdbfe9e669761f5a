using System.Text.Json.Serialization;

namespace Scrapwright.Core.Measures;

/// <summary>An exact length: a whole number of picometres, of either sign. <c>default</c> is zero.</summary>
/// <remarks>
/// Every mark on a tape or caliper is whole (1/512 in = 49,609,375 pm, 0.0001 in, 0.001 mm). The range is about ±9,223 km;
/// arithmetic beyond it throws <see cref="OverflowException"/>. Why picometres: docs/decisions/0001-length-in-picometres.md.
/// </remarks>
[JsonConverter(typeof(LengthJsonConverter))]
public readonly partial record struct Length : IComparable<Length>, IComparable
{
    internal const long PicometresPerMicrometre = 1_000_000;
    internal const long PicometresPerMillimetre = 1_000_000_000;

    // 1 in = 25.4 mm exactly: international yard and pound agreement, 1959.
    internal const long PicometresPerInch = 25_400_000_000;

    private Length(long picometres) => Picometres = picometres;

    /// <summary>No length, 0 pm.</summary>
    public static Length Zero => default;

    /// <summary>The length. [pm], exact</summary>
    public long Picometres { get; }

    /// <summary>The length as a floating value, for physics and drawing only. [mm], nearest double</summary>
    public double Millimetres => Picometres / (double)PicometresPerMillimetre;

    /// <summary>The length as a floating value, for physics and drawing only. [in], nearest double</summary>
    public double Inches => Picometres / (double)PicometresPerInch;

    /// <summary>Whether the length is exactly zero.</summary>
    public bool IsZero => Picometres == 0;

    /// <summary>Whether the length is above zero.</summary>
    public bool IsPositive => Picometres > 0;

    /// <summary>Whether the length is below zero.</summary>
    public bool IsNegative => Picometres < 0;

    /// <summary>The shorter of two lengths.</summary>
    public static Length Min(Length a, Length b) => a <= b ? a : b;

    /// <summary>The longer of two lengths.</summary>
    public static Length Max(Length a, Length b) => a >= b ? a : b;

    /// <summary>The exact sum; zero for no lengths.</summary>
    /// <exception cref="OverflowException">The sum is out of range.</exception>
    public static Length Sum(IEnumerable<Length> lengths)
    {
        ArgumentNullException.ThrowIfNull(lengths);
        var total = Zero;
        foreach (var length in lengths) total += length;
        return total;
    }

    /// <summary>The length without its sign.</summary>
    public Length Abs() => IsNegative ? -this : this;

    /// <inheritdoc/>
    public int CompareTo(Length other) => Picometres.CompareTo(other.Picometres);

    /// <inheritdoc/>
    public int CompareTo(object? obj) => obj switch
    {
        null => 1,
        Length other => CompareTo(other),
        _ => throw new ArgumentException($"A Length compares with a Length, not with a {obj.GetType().Name}.", nameof(obj)),
    };

    /// <summary>The exact length in millimetres with its unit, such as <c>9.525 mm</c>.</summary>
    public override string ToString() => ToExactText(LengthUnit.Millimetre);
}
