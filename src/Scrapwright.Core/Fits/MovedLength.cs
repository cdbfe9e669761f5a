using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Fits;

/// <summary>The one place of this area where a change worked out in floating numbers comes back to exact lengths.</summary>
internal static class MovedLength
{
    /// <summary>A size after a change.</summary>
    /// <param name="size">The size before, exact.</param>
    /// <param name="changeMm">What it grows by; below zero when it shrinks. [mm]</param>
    /// <param name="rounding">To a picometre: towards the answer that is safe for the caller.</param>
    internal static Length After(Length size, double changeMm, Rounding rounding) => size + Length.FromMillimetresRounded(changeMm, rounding);

    /// <summary>A change alone, away from zero, so that movement is never told smaller than it is.</summary>
    internal static Length Change(double changeMm) => Length.FromMillimetresRounded(changeMm, changeMm < 0 ? Rounding.Down : Rounding.Up);
}
