using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Shops;

/// <summary>Limits of the bandsaw.</summary>
public sealed record Bandsaw
{
    /// <summary>Width of the cut.</summary>
    public Length Kerf { get; init; } = Length.FromInches(1, 16);

    /// <summary>Highest piece that can be resawn: the width of the panel standing on edge.</summary>
    public Length ResawHeight { get; init; } = Length.FromInches(6);

    /// <summary>Shortest piece that may be resawn.</summary>
    public Length MinimumLength { get; init; } = Length.FromInches(6);
}
