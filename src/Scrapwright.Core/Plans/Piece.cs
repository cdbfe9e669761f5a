using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans;

/// <summary>A box of wood at one moment: sizes and which offcut each stretch of its width came from. Rod pieces have no lanes.</summary>
/// <param name="Id">What it is called on sheets; a piece that changes size without being cut keeps its id.</param>
/// <param name="Length">Size along the grain.</param>
/// <param name="Width">Size across the grain; the sum of the lanes' widths.</param>
/// <param name="Thickness">Thickness.</param>
/// <param name="Lanes">From lower to upper edge.</param>
public sealed record Piece(string Id, Length Length, Length Width, Length Thickness, ImmutableArray<Lane> Lanes);
