using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Designs;

/// <summary>A set of equal squares that a stand holds.</summary>
/// <param name="Count">How many.</param>
/// <param name="Size">Side of one square.</param>
/// <param name="Thickness">Thickness of one after sanding.</param>
public sealed record StackedSet(int Count, Length Size, Length Thickness)
{
    /// <summary>Height of the stack: count times thickness after sanding.</summary>
    public Length Height => Thickness * Count;
}
