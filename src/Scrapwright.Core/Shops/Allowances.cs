using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Shops;

/// <summary>
/// What each kind of work takes away in this shop, on top of what warp costs. The defaults are common practice of a small shop, no source;
/// the maker's own readings replace them.
/// </summary>
public sealed record Allowances
{
    /// <summary>Face jointing one rough face until it is clean (thickness).</summary>
    public Allowance FaceJoint { get; init; } = new(Length.FromInches(1, 32), Length.FromInches(1, 128));

    /// <summary>Planing the second face parallel (thickness).</summary>
    public Allowance FacePlane { get; init; } = new(Length.FromInches(1, 32), Length.FromInches(1, 128));

    /// <summary>Jointing one edge straight and square (width), each edge.</summary>
    public Allowance EdgeJoint { get; init; } = new(Length.FromInches(1, 32), Length.FromInches(1, 64));

    /// <summary>Flattening a glued panel, both faces together (thickness).</summary>
    public Allowance PanelFlatten { get; init; } = new(Length.FromInches(1, 16), Length.FromInches(1, 64));

    /// <summary>Cleaning the sawn faces of one layer after resawing (thickness of that layer).</summary>
    public Allowance ResawCleanUp { get; init; } = new(Length.FromInches(1, 32), Length.FromInches(1, 128));

    /// <summary>Sanding one face from planer marks to the last grit (thickness), each face.</summary>
    public Allowance Sand { get; init; } = new(Length.FromInches(1, 128), Length.FromInches(1, 512));

    /// <summary>Squaring one end with the crosscut saw (length, kerf included), each end.</summary>
    public Allowance EndTrim { get; init; } = new(Length.FromInches(1, 4), Length.FromInches(1, 16));

    /// <summary>Least width that trimming a panel's two outer edges takes together, kerf included.</summary>
    public Allowance WidthTrim { get; init; } = new(Length.FromInches(1, 4), Length.FromInches(1, 32));
}
