using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans.Choices;

/// <summary>A piece along a lane of an offcut that was cut.</summary>
/// <param name="Piece">Id of the piece.</param>
/// <param name="Length">Its length.</param>
public sealed record MilledPiece(string Piece, Length Length);
