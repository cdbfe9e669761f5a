using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Milling;

/// <summary>Sizes that a maker can set on a fence: whole 1/32 in or whole half millimetres.</summary>
public static class ReadableSize
{
    /// <summary>The mark at or above a size.</summary>
    public static Length Up(Length size, LengthUnit unit) => size.RoundTo(Mark(unit), Rounding.Up);

    /// <summary>The mark at or below a size.</summary>
    public static Length Down(Length size, LengthUnit unit) => size.RoundTo(Mark(unit), Rounding.Down);

    /// <summary>Distance between two marks.</summary>
    public static Length Mark(LengthUnit unit) =>
        unit == LengthUnit.Inch ? Length.FromInches(1, 32) : Length.FromMicrometres(500);
}
