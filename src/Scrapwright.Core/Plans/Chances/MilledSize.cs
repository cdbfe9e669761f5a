using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans.Chances;

/// <summary>What a piece is expected to measure in one direction, and whose work it depends on.</summary>
/// <param name="Expected">Expected size.</param>
/// <param name="Draws">Works whose allowance spreads, by number, with one standard deviation. [mm]</param>
internal sealed record MilledSize(Length Expected, ImmutableArray<(int Draw, double SpreadMm)> Draws)
{
    /// <summary>One more work; nothing changes but the size when its allowance has no spread.</summary>
    public MilledSize After(Length size, int draw, double spreadMm) => new(size, spreadMm > 0 ? Draws.Add((draw, spreadMm)) : Draws);
}
