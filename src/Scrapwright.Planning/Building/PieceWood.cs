using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning.Building;

/// <summary>How much of each offcut is in a piece.</summary>
internal static class PieceWood
{
    internal static IEnumerable<(string Offcut, Volume Volume)> ByOffcut(Piece piece) =>
        piece.Lanes.Select(l => (l.Offcut, Volume.Of(piece.Length, l.Width, piece.Thickness)));
}
