using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Designs;

/// <summary>An open slot, half of a half-lap: cut into one edge of a part that stands on edge, or across one face of a part that lies flat.</summary>
/// <param name="FromEnd">Near side of the slot from the part's left end, along the grain.</param>
/// <param name="Opening">Width of the slot along the grain.</param>
/// <param name="Depth">Depth of the slot from the edge, across the grain; across a face, from that face into the thickness.</param>
/// <param name="OnUpperEdge">True when it is cut into the upper edge, false for the lower.</param>
public sealed record Notch(Length FromEnd, Length Opening, Length Depth, bool OnUpperEdge)
{
    /// <summary>True when it runs across the whole width of the outer face, and <see cref="Depth"/> goes into the thickness.</summary>
    public bool AcrossFace { get; init; }
}
