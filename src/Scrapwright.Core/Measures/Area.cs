using System.Text.Json.Serialization;

namespace Scrapwright.Core.Measures;

/// <summary>An exact area: a whole number of square picometres, of either sign. <c>default</c> is zero.</summary>
/// <remarks>The range is far beyond any shop. Arithmetic beyond the range throws <see cref="OverflowException"/>.</remarks>
[JsonConverter(typeof(AreaJsonConverter))]
public readonly record struct Area : IComparable<Area>, IComparable
{
    private Area(Int128 picometres) => SquarePicometres = picometres;

    /// <summary>Nothing.</summary>
    public static Area Zero => default;

    /// <summary>The area. [pm²], exact</summary>
    public Int128 SquarePicometres { get; }

    /// <summary>The area as a floating value, for physics and drawing only. [mm²], nearest double</summary>
    public double SquareMillimetres => (double)SquarePicometres / 1e18;

    /// <summary>A area of whole square picometres. [pm²]</summary>
    public static Area FromSquarePicometres(Int128 picometres) => new(picometres);

    /// <summary>The exact area of a rectangle.</summary>
    public static Area Of(Length length, Length width) => new((Int128)length.Picometres * width.Picometres);

    /// <summary>The exact sum; zero for none.</summary>
    public static Area Sum(IEnumerable<Area> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        var total = Zero;
        foreach (var value in values) total += value;
        return total;
    }

    /// <summary>The exact sum.</summary>
    public static Area operator +(Area left, Area right) => new(left.SquarePicometres + right.SquarePicometres);

    /// <summary>The exact difference.</summary>
    public static Area operator -(Area left, Area right) => new(left.SquarePicometres - right.SquarePicometres);

    /// <summary>The area taken several times, exactly.</summary>
    public static Area operator *(Area value, long times) => new(value.SquarePicometres * times);

    /// <summary>The area taken several times, exactly.</summary>
    public static Area operator *(long times, Area value) => value * times;

    /// <summary>Whether left is smaller.</summary>
    public static bool operator <(Area left, Area right) => left.SquarePicometres < right.SquarePicometres;

    /// <summary>Whether left is smaller or equal.</summary>
    public static bool operator <=(Area left, Area right) => left.SquarePicometres <= right.SquarePicometres;

    /// <summary>Whether left is larger.</summary>
    public static bool operator >(Area left, Area right) => left.SquarePicometres > right.SquarePicometres;

    /// <summary>Whether left is larger or equal.</summary>
    public static bool operator >=(Area left, Area right) => left.SquarePicometres >= right.SquarePicometres;

    /// <inheritdoc/>
    public int CompareTo(Area other) => SquarePicometres.CompareTo(other.SquarePicometres);

    /// <inheritdoc/>
    public int CompareTo(object? obj) => obj switch
    {
        null => 1,
        Area other => CompareTo(other),
        _ => throw new ArgumentException($"A Area compares with a Area, not with a {obj.GetType().Name}.", nameof(obj)),
    };

    /// <summary>The exact area in square picometres, such as <c>5 pm²</c>.</summary>
    public override string ToString() => $"{SquarePicometres} pm²";
}
