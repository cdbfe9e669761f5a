using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Finishing;

/// <summary>How a clamp's force spreads in the wood: 45° to each side of where it presses, so at a distance it covers a stretch twice as long.</summary>
/// <remarks>[Rabiej2007], as the magazine's editors sum it up in 2010: a board 6 in wide gives a cone 12 in wide at its joint.</remarks>
public static class PressureCone
{
    /// <summary>Stretch of a glue line that one clamp presses.</summary>
    /// <param name="distance">From the clamp's face to the glue line, zero or more.</param>
    public static Length Covers(Length distance) => distance * 2;

    /// <summary>Thickness of a caul between clamp and wood with which the cones of neighbouring clamps meet at the first glue line; zero when the wood is wide enough.</summary>
    /// <param name="gap">Distance between neighbouring clamps.</param>
    /// <param name="outerStrip">Width of the strip between clamp and first glue line.</param>
    /// <returns>Half the gap less the strip, exact to a picometre, rounded up.</returns>
    public static Length Caul(Length gap, Length outerStrip) => Length.Max(Length.Zero, gap.Divide(2, Rounding.Up) - outerStrip);
}
