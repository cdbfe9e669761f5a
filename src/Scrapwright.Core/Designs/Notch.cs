using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Designs;

/// <summary>An open slot cut into one edge, half of an edge half-lap.</summary>
/// <param name="FromEnd">Near side of the slot from the part's left end, along the grain.</param>
/// <param name="Opening">Width of the slot along the grain.</param>
/// <param name="Depth">Depth of the slot from the edge, across the grain.</param>
/// <param name="OnUpperEdge">True when it is cut into the upper edge, false for the lower.</param>
public sealed record Notch(Length FromEnd, Length Opening, Length Depth, bool OnUpperEdge);
