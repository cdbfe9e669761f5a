using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Shops;

/// <summary>Limits of the drill press.</summary>
public sealed record DrillPress
{
    /// <summary>Distance from the column to the middle of the chuck.</summary>
    public Length Throat { get; init; } = Length.FromInches(5);

    /// <summary>Deepest hole in one stroke.</summary>
    public Length Stroke { get; init; } = Length.FromInches(2);
}
