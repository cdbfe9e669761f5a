using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Problems;

/// <summary>The solver's whole numbers for lengths: multiples of one unit. What is needed is rounded up, what is there is rounded down, never the other way.</summary>
internal sealed class Grid
{
    /// <summary>Most marks on the longest length, so that sums stay far from the solver's limits.</summary>
    private const long MostMarks = int.MaxValue;

    private readonly long picometresPerMark;

    private Grid(long picometresPerMark) => this.picometresPerMark = picometresPerMark;

    /// <summary>Hundredths of a millimetre: for widths, whose margins are statistical anyway.</summary>
    internal static Grid Hundredths { get; } = new(10_000_000);

    /// <summary>The greatest common measure of the lengths, on which each is exact; hundredths of a millimetre when that is too fine.</summary>
    internal static Grid For(IEnumerable<Length> lengths)
    {
        long common = 0;
        long longest = 0;
        foreach (var length in lengths)
        {
            common = (long)System.Numerics.BigInteger.GreatestCommonDivisor(common, length.Picometres);
            longest = Math.Max(longest, length.Picometres);
        }

        return common == 0 || longest / common > MostMarks ? Hundredths : new Grid(common);
    }

    internal long Down(Length length) => FloorDivide(length.Picometres);

    internal long Up(Length length) => -FloorDivide(-length.Picometres);

    private long FloorDivide(long picometres)
    {
        var quotient = picometres / picometresPerMark;
        return picometres % picometresPerMark < 0 ? quotient - 1 : quotient;
    }
}
