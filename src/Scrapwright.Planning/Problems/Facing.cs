using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;

namespace Scrapwright.Planning.Problems;

/// <summary>What a board is glued from, when it is one glued face to face.</summary>
/// <param name="Gluing">The gluing.</param>
/// <param name="Upper">Place of the upper offcut in the problem.</param>
/// <param name="Lower">Place of the lower offcut in the problem.</param>
internal sealed record Facing(FaceGluing Gluing, int Upper, int Lower)
{
    /// <summary>One standard deviation of the board's thickness when it comes out of the clamps.</summary>
    internal Length Spread { get; } = Gluing.Spread;

    /// <summary>Thickness of both offcuts together as they lie in the pile.</summary>
    internal Length RoughThickness { get; } = Gluing.RoughThickness;
}
