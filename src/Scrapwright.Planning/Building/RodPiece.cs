using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Building;

/// <summary>A rod part to be cut.</summary>
/// <param name="Id">Its piece id.</param>
/// <param name="Diameter">Diameter.</param>
/// <param name="Length">Length.</param>
/// <param name="Species">Species wished, best first; empty for any.</param>
internal sealed record RodPiece(string Id, Length Diameter, Length Length, System.Collections.Immutable.ImmutableArray<string> Species);
