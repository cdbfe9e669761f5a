namespace Scrapwright.Core.Designs;

/// <summary>Which way a size lies in a part. Wood moves across its grain and hardly along it.</summary>
public enum GrainDirection
{
    /// <summary>Along the grain: the part's length. Taken as not moving.</summary>
    Along,

    /// <summary>Across the grain: the part's width.</summary>
    Width,

    /// <summary>Across the grain: the part's thickness. A rod's diameter counts as <see cref="Width"/>.</summary>
    Thickness,
}
