using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Audit;

internal sealed partial class Replay
{
    /// <summary>Two whole offcuts, inner faces flat, become one board.</summary>
    private void FaceGlue(Work work, string where)
    {
        if (!findings.Equal(where + " pieces coming out", work.Out.Length, 1) || !findings.Equal(where + " pieces going in", work.In.Length, 2)
            || Stock.FindAll(where, work.In) is not [var upper, var lower])
        {
            return;
        }

        var board = work.Out[0];
        if (!facts.FacedByLabel.TryGetValue(board.Id, out var wood))
        {
            findings.Add(where, board.Id, "a board of the plan");
            return;
        }

        findings.Require(faced.Add(board.Id), where, $"{board.Id} is glued twice", "once");
        findings.Same(where + " offcuts", work.In, [wood.Upper.Label, wood.Lower.Label]);
        foreach (var (half, offcut) in new[] { (upper, wood.Upper), (lower, wood.Lower) })
        {
            var isWhole = half.Piece.Id == offcut.Label && half.Piece.Length == offcut.Length && half.Piece.Width == offcut.Width && half is { FacePlaned: false, LowerEdge: false, UpperEdge: false };
            findings.Require(isWhole, where, $"{half.Piece.Id} is milled or cut", "a whole offcut of which at most one face is jointed");
            findings.Require(half.FaceJointed || !FacedWood.MustBeJointed(offcut), where, $"{half.Piece.Id} has no flat inner face", "a flat inner face");
        }

        CheckPiece(where, board, new Piece(
            wood.Stated.Label, wood.Board.Length, wood.Board.Width, upper.Piece.Thickness + lower.Piece.Thickness, [new Lane(wood.Stated.Label, wood.Board.Width)]));
        foreach (var (name, found) in (ReadOnlySpan<(string, Length)>)[("taken", work.Taken), ("taken first", work.TakenFirst), ("setting", work.Setting)])
        {
            findings.Equal($"{where} {name}", found, Length.Zero);
        }

        CheckNoCut(work, where);
        findings.Equal(where + " way of working", work.Workaround, Workaround.None);
        Stock.Face(where, [upper, lower], new LivePiece(board, Stock.NextBorn()) { FaceWorks = [.. upper.FaceWorks, .. lower.FaceWorks] });
    }
}
