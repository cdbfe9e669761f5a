using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Designs;

/// <summary>A drilled hole.</summary>
/// <param name="FromEnd">Middle of the hole from the part's left end, along the grain.</param>
/// <param name="FromEdge">Middle of the hole from the part's lower edge, across the grain.</param>
/// <param name="Diameter">Diameter of the bit.</param>
/// <param name="Depth">Depth; equal to the thickness for a through hole.</param>
/// <param name="FromInside">True when it is drilled from the face that will be the inside.</param>
public sealed record Hole(Length FromEnd, Length FromEdge, Length Diameter, Length Depth, bool FromInside);
