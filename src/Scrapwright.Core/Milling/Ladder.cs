using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Milling;

/// <summary>What a piece measures in one direction after each operation, from rough to finished.</summary>
/// <param name="Start">Size before the first operation.</param>
/// <param name="Rungs">The operations in order.</param>
public sealed record Ladder(Length Start, ImmutableArray<Rung> Rungs)
{
    /// <summary>Expected size after the last rung.</summary>
    public Length End => Rungs.IsEmpty ? Start : Rungs[^1].After;

    /// <summary>One standard deviation of the last size.</summary>
    public Length Spread => Rungs.IsEmpty ? Length.Zero : Rungs[^1].Spread;
}
