using System.Numerics;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>
/// Thickness that cup, bow and twist cost, worked out once more from the geometry and in numbers without limit:
/// a hollow over part of its chord keeps the square of that part, a corner's lift falls linearly with length and with width.
/// Each result is rounded up to a picometre, the twist once for the length and once for the width.
/// </summary>
internal static class WarpLoss
{
    /// <summary>What flattening a piece of the given size cut from the offcut costs, beside the jointer's own allowance.</summary>
    public static Length Of(Offcut offcut, Length length, Length width)
    {
        var cup = Share(offcut.Cup.Picometres, Square(width), Square(offcut.Width));
        var bow = Share(offcut.Bow.Picometres, Square(length), Square(offcut.Length));
        var lift = Share(offcut.Twist.Picometres, length.Picometres, offcut.Length.Picometres);
        var twist = Share(lift, width.Picometres, offcut.Width.Picometres);
        var sum = cup + bow + twist;
        return Length.FromPicometres((long)BigInteger.Min(sum, Beyond));
    }

    // More than any wood is thick, and far from the end of the range.
    private static readonly BigInteger Beyond = long.MaxValue / 4;

    private static BigInteger Square(Length length) => (BigInteger)length.Picometres * length.Picometres;

    private static BigInteger Share(BigInteger value, BigInteger part, BigInteger whole)
    {
        var quotient = BigInteger.DivRem(value * part, whole, out var rest);
        return rest.IsZero ? quotient : quotient + 1;
    }
}
