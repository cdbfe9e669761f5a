namespace Scrapwright.Core.Plans;

/// <summary>A piece that is no part of a gift in the end. Offcuts that are not touched are leftovers too.</summary>
/// <param name="Piece">The piece with its sizes.</param>
/// <param name="Place">Where it goes.</param>
public sealed record Leftover(Piece Piece, LeftoverPlace Place);
