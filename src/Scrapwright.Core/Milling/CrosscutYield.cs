using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Milling;

/// <summary>How many equal blanks a length gives, and what length a number of blanks needs.</summary>
public static class CrosscutYield
{
    /// <summary>⌊(L + k) / (p + k)⌋: n blanks need n − 1 kerfs between them.</summary>
    /// <param name="available">Length after both ends are squared.</param>
    /// <param name="blank">Length of one blank; above zero.</param>
    /// <param name="kerf">Width of a cut.</param>
    public static long Count(Length available, Length blank, Length kerf)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(blank, Length.Zero);
        return available < blank ? 0 : (available + kerf).Picometres / (blank + kerf).Picometres;
    }

    /// <summary>Length that a number of blanks needs, kerfs between them included.</summary>
    public static Length Needed(int blanks, Length blank, Length kerf)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(blanks, 1);
        return (blank * blanks) + (kerf * (blanks - 1));
    }
}
