using System.Text.Json.Serialization;

namespace Scrapwright.Core.Measures;

/// <summary>An exact volume: a whole number of cubic picometres, of either sign. <c>default</c> is zero.</summary>
/// <remarks>The range is about ±170 m³. Arithmetic beyond the range throws <see cref="OverflowException"/>.</remarks>
[JsonConverter(typeof(VolumeJsonConverter))]
public readonly record struct Volume : IComparable<Volume>, IComparable
{
    private Volume(Int128 picometres) => CubicPicometres = picometres;

    /// <summary>Nothing.</summary>
    public static Volume Zero => default;

    /// <summary>The volume. [pm³], exact</summary>
    public Int128 CubicPicometres { get; }

    /// <summary>The volume as a floating value, for physics and drawing only. [mm³], nearest double</summary>
    public double CubicMillimetres => (double)CubicPicometres / 1e27;

    /// <summary>The volume in board feet of 144 cubic inches each, for reading only. [board foot], nearest double</summary>
    public double BoardFeet => CubicMillimetres / (144 * 25.4 * 25.4 * 25.4);

    /// <summary>A volume of whole cubic picometres. [pm³]</summary>
    public static Volume FromCubicPicometres(Int128 picometres) => new(picometres);

    /// <summary>The exact volume of a box.</summary>
    /// <exception cref="OverflowException">Out of range.</exception>
    public static Volume Of(Length length, Length width, Length thickness) =>
        new((Int128)length.Picometres * width.Picometres * thickness.Picometres);

    /// <summary>The exact sum; zero for none.</summary>
    public static Volume Sum(IEnumerable<Volume> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        var total = Zero;
        foreach (var value in values) total += value;
        return total;
    }

    /// <summary>The exact sum.</summary>
    public static Volume operator +(Volume left, Volume right) => new(left.CubicPicometres + right.CubicPicometres);

    /// <summary>The exact difference.</summary>
    public static Volume operator -(Volume left, Volume right) => new(left.CubicPicometres - right.CubicPicometres);

    /// <summary>The volume taken several times, exactly.</summary>
    public static Volume operator *(Volume value, long times) => new(value.CubicPicometres * times);

    /// <summary>The volume taken several times, exactly.</summary>
    public static Volume operator *(long times, Volume value) => value * times;

    /// <summary>Whether left is smaller.</summary>
    public static bool operator <(Volume left, Volume right) => left.CubicPicometres < right.CubicPicometres;

    /// <summary>Whether left is smaller or equal.</summary>
    public static bool operator <=(Volume left, Volume right) => left.CubicPicometres <= right.CubicPicometres;

    /// <summary>Whether left is larger.</summary>
    public static bool operator >(Volume left, Volume right) => left.CubicPicometres > right.CubicPicometres;

    /// <summary>Whether left is larger or equal.</summary>
    public static bool operator >=(Volume left, Volume right) => left.CubicPicometres >= right.CubicPicometres;

    /// <inheritdoc/>
    public int CompareTo(Volume other) => CubicPicometres.CompareTo(other.CubicPicometres);

    /// <inheritdoc/>
    public int CompareTo(object? obj) => obj switch
    {
        null => 1,
        Volume other => CompareTo(other),
        _ => throw new ArgumentException($"A Volume compares with a Volume, not with a {obj.GetType().Name}.", nameof(obj)),
    };

    /// <summary>The exact volume in cubic picometres, such as <c>5 pm³</c>.</summary>
    public override string ToString() => $"{CubicPicometres} pm³";
}
