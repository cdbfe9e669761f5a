using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>Where the defects of an offcut are after it was cut.</summary>
internal static class WoodFlaws
{
    /// <summary>Whether a piece of one offcut holds some of a stretch to cut round.</summary>
    public static bool Touch(LivePiece piece, Facts facts)
    {
        if (piece.Panel is not null || piece.Piece.Lanes is not [var lane] || !facts.OffcutByLabel.TryGetValue(lane.Offcut, out var offcut))
        {
            return false;
        }

        var to = piece.From + piece.Piece.Length;
        return offcut.ToCutRound().Any(d => Length.Max(d.From, piece.From) < Length.Min(d.To, to)
            && (d.Across is not { } across || Length.Max(across.From, piece.AcrossFrom) < Length.Min(across.To, piece.AcrossTo)));
    }
}
