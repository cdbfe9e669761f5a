using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Shops;

/// <summary>Limits of the table saw, used for ripping and, with a sled, for crosscutting.</summary>
public sealed record TableSaw
{
    /// <summary>Width of the cut.</summary>
    public Length Kerf { get; init; } = Length.FromInches(1, 8);

    /// <summary>Shortest piece that may be ripped along the fence.</summary>
    public Length MinimumRipLength { get; init; } = Length.FromInches(12);

    /// <summary>Narrowest strip that may be ripped between blade and fence.</summary>
    public Length MinimumRipWidth { get; init; } = Length.FromInches(3, 4);

    /// <summary>Deepest cut with the blade upright.</summary>
    public Length MaximumDepth { get; init; } = Length.FromInches(3);

    /// <summary>Longest crosscut the sled takes (across the piece).</summary>
    public Length MaximumCrosscut { get; init; } = Length.FromInches(12);
}
