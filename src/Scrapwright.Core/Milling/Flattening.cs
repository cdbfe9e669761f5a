using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Core.Milling;

/// <summary>
/// Thickness that warp costs, by geometry. A hollow of depth s over a chord w lies on a circle of radius R with s = w²/8R,
/// so a piece cut to part of the chord keeps the square of that part of the hollow. A corner's lift is bilinear in length and width.
/// A board of even thickness T, hollow by s, leaves T − s when both faces are flat: what the first face loses at its edges the second loses in its middle.
/// Every result is rounded up to the next picometre.
/// </summary>
public static class Flattening
{
    /// <summary>What is left of a hollow of depth <paramref name="hollow"/> over <paramref name="whole"/> when only <paramref name="part"/> of it is kept.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The part is longer than the whole, or a size is not above zero.</exception>
    public static Length HollowAfterCut(Length hollow, Length whole, Length part)
    {
        Check(whole, part);
        var exact = (Int128)hollow.Picometres * part.Picometres * part.Picometres;
        var square = (Int128)whole.Picometres * whole.Picometres;
        return Length.FromPicometres((long)((exact + square - 1) / square));
    }

    /// <summary>What is left of a corner's lift when a piece is cut from <paramref name="length"/> × <paramref name="width"/> to the part sizes.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A part is longer than the whole, or a size is not above zero.</exception>
    public static Length TwistAfterCut(Length twist, Length length, Length width, Length partLength, Length partWidth)
    {
        Check(length, partLength);
        Check(width, partWidth);
        var exact = (Int128)twist.Picometres * partLength.Picometres;
        var once = (exact + length.Picometres - 1) / length.Picometres;
        return Length.FromPicometres((long)(((once * partWidth.Picometres) + width.Picometres - 1) / width.Picometres));
    }

    /// <summary>Thickness lost to cup, bow and twist together when the offcut is cut to the given size before it is flattened.</summary>
    /// <param name="offcut">The offcut.</param>
    /// <param name="cutLength">Length at the time of flattening; at most the offcut's.</param>
    /// <param name="cutWidth">Width at the time of flattening; at most the offcut's.</param>
    public static Length Loss(Offcut offcut, Length cutLength, Length cutWidth)
    {
        ArgumentNullException.ThrowIfNull(offcut);
        return HollowAfterCut(offcut.Cup, offcut.Width, cutWidth)
            + HollowAfterCut(offcut.Bow, offcut.Length, cutLength)
            + TwistAfterCut(offcut.Twist, offcut.Length, offcut.Width, cutLength, cutWidth);
    }

    private static void Check(Length whole, Length part)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(part, Length.Zero);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(part, whole);
    }
}
