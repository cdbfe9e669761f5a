using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Cutting;

/// <summary>How a rectangle is cut: a crosscut, a rip, a part of exactly this size, or spare wood.</summary>
internal abstract record CutTree
{
    private CutTree()
    {
    }

    /// <summary>A cut across the grain.</summary>
    /// <param name="At">Length of the first piece; the second begins a kerf further on.</param>
    /// <param name="First">What becomes of the first piece.</param>
    /// <param name="Second">What becomes of the second piece; spare when the cut runs off the end.</param>
    internal sealed record Crosscut(Length At, CutTree First, CutTree Second) : CutTree;

    /// <summary>A cut along the grain.</summary>
    /// <param name="At">Width of the first piece; the second begins a kerf further on.</param>
    /// <param name="First">What becomes of the first piece.</param>
    /// <param name="Second">What becomes of the second piece; spare when the cut runs off the edge.</param>
    internal sealed record Rip(Length At, CutTree First, CutTree Second) : CutTree;

    /// <summary>A part.</summary>
    /// <param name="Part">Index of the part.</param>
    /// <param name="IsTurned">Whether its length lies across the grain.</param>
    internal sealed record Placed(int Part, bool IsTurned) : CutTree;

    /// <summary>Nothing is cut from it.</summary>
    internal sealed record Spare : CutTree;

    /// <summary>The parts in the tree, in the order of cutting.</summary>
    internal IEnumerable<Placed> Parts() => this switch
    {
        Crosscut c => c.First.Parts().Concat(c.Second.Parts()),
        Rip r => r.First.Parts().Concat(r.Second.Parts()),
        Placed p => [p],
        _ => [],
    };
}
