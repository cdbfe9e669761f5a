using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Problems;

/// <summary>The solver's grid: whole hundredths of a millimetre. What is needed is rounded up, what is there is rounded down, never the other way.</summary>
internal static class Grid
{
    private const long PicometresPerMark = 10_000_000;

    internal static long Down(Length length) => FloorDivide(length.Picometres);

    internal static long Up(Length length) => -FloorDivide(-length.Picometres);

    private static long FloorDivide(long picometres)
    {
        var quotient = picometres / PicometresPerMark;
        return picometres % PicometresPerMark < 0 ? quotient - 1 : quotient;
    }
}
