using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Audit;

internal sealed partial class Replay
{
    /// <summary>Work that changes a piece's size without cutting it in two.</summary>
    private void Shape(Operation operation, Work work, LivePiece piece, string where)
    {
        var before = piece.Piece;
        var after = operation switch
        {
            Operation.FaceJoint => FaceJoint(work, piece, where),
            Operation.FacePlane => FacePlane(work, piece, where),
            Operation.EdgeJoint => EdgeJoint(work, piece, where),
            Operation.CleanSawnFaces => CleanSawnFaces(piece, where),
            Operation.PlaneToThickness => PlaneToThickness(piece, where),
            Operation.FlattenPanel => FlattenPanel(piece, where),
            Operation.PlanePanel => PlanePanel(piece, where),
            _ => TrimWidth(piece, where),
        };
        if (after is null)
        {
            return;
        }

        var worksWidth = operation is Operation.EdgeJoint or Operation.TrimWidth;
        var taken = worksWidth ? before.Width - after.Width : before.Thickness - after.Thickness;
        findings.Require(taken >= Length.Zero && after.Width > Length.Zero && after.Thickness > Length.Zero, where, $"{before.Width} × {before.Thickness}", $"enough for {after.Width} × {after.Thickness}");
        findings.Equal(where + " taken", work.Taken, taken);
        findings.Equal(where + " taken first", work.TakenFirst, operation == Operation.TrimWidth ? taken.Divide(2, Rounding.Down) : Length.Zero);
        findings.Equal(where + " setting", work.Setting, worksWidth ? after.Width : after.Thickness);
        CheckNoCut(work, where);
        CheckWay(operation, work, before.Length, operation == Operation.TrimWidth ? after.Width : before.Width, after.Thickness, where);
        CheckPiece(where, work.Out[0], after);
        if (work.Out[0].Id == before.Id)
        {
            Stock.Change(piece, work.Out[0], operation);
        }
    }

    private void CheckNoCut(Work work, string where)
    {
        findings.Equal(where + " kerf", work.Kerf, Length.Zero);
        findings.Equal(where + " cuts", work.Cuts, 0);
    }

    private Piece? FaceJoint(Work work, LivePiece piece, string where)
    {
        if (!OffcutOf(piece, where, out var offcut))
        {
            return null;
        }

        findings.Require(MustBeJointed(offcut) && !piece.FaceJointed, where, $"{piece.Piece.Id} is jointed", "a rough or warped face that is not jointed yet");
        piece.FaceJointed = true;
        NoteFace(piece, Shop.Allowances.FaceJoint);
        var loss = WarpLoss.Of(offcut, piece.Piece.Length, piece.Piece.Width) + Shop.Allowances.FaceJoint.Mean;
        return piece.Piece with { Thickness = piece.Piece.Thickness - loss };
    }

    private Piece? FacePlane(Work work, LivePiece piece, string where)
    {
        if (!OffcutOf(piece, where, out var offcut))
        {
            return null;
        }

        var ready = MustBePlaned(offcut) && !piece.FacePlaned && (piece.FaceJointed || !MustBeJointed(offcut));
        findings.Require(ready, where, $"{piece.Piece.Id} is planed", "a piece with one flat face whose other face needs it");
        piece.FacePlaned = true;
        NoteFace(piece, Shop.Allowances.FacePlane);
        return piece.Piece with { Thickness = piece.Piece.Thickness - Shop.Allowances.FacePlane.Mean };
    }

    private Piece? EdgeJoint(Work work, LivePiece piece, string where)
    {
        if (!OffcutOf(piece, where, out var offcut))
        {
            return null;
        }

        findings.Require(FacesDone(piece, offcut), where, $"{piece.Piece.Id} has no flat faces", "flat faces before edges");
        var open = (piece.LowerEdge ? 0 : 1) + (piece.UpperEdge ? 0 : 1);
        var each = Shop.Allowances.EdgeJoint.Mean;
        var edges = work.Taken == each * open ? open : 1;
        if (!findings.Require(open > 0, where, $"{piece.Piece.Id} has both edges jointed", "an edge to joint"))
        {
            return null;
        }

        piece.EdgeWorks = piece.EdgeWorks.Add((workIndex, Shop.Allowances.EdgeJoint.Spread.Millimetres * Math.Sqrt(each.IsZero ? 2 : edges)));
        piece.UpperEdge |= edges == 2 || piece.LowerEdge;
        piece.LowerEdge = true;
        var width = piece.Piece.Width - (each * edges);
        return piece.Piece with { Width = width, Lanes = [new Lane(offcut.Label, width)] };
    }

    private Piece CleanSawnFaces(LivePiece piece, string where)
    {
        findings.Require(piece is { Layers: > 1, Cleaned: false }, where, $"{piece.Piece.Id} is not resawn, or clean already", "a resawn strip, once");
        piece.Cleaned = true;
        NoteFace(piece, Shop.Allowances.ResawCleanUp);
        return piece.Piece with { Thickness = piece.Piece.Thickness - Shop.Allowances.ResawCleanUp.Mean };
    }

    private Piece? PlaneToThickness(LivePiece piece, string where)
    {
        Length target;
        if (facts.GlueUpByStrip.TryGetValue(piece.Piece.Id, out var glueUp))
        {
            target = glueUp.Strips.Min(s => s.Thickness);
        }
        else if (facts.BoardByPiece.TryGetValue(piece.Piece.Id, out var board)
            && facts.FindRun(board.Gift, board.Run) is { Members: [var first, ..] } && facts.FindPart(board.Gift, first.Part) is { } part)
        {
            target = part.Thickness + (Shop.Allowances.Sand.Mean * 2);
        }
        else
        {
            findings.Add(where, piece.Piece.Id, "a strip of a glue-up or of a board run");
            return null;
        }

        findings.Require(piece.BeforePlaning is null, where, $"{piece.Piece.Id} is planed twice", "once");
        piece.BeforePlaning ??= piece.Piece.Thickness;
        return piece.Piece with { Thickness = target };
    }

    private void NoteFace(LivePiece piece, Allowance allowance) => piece.FaceWorks = piece.FaceWorks.Add((workIndex, allowance.Spread.Millimetres));

    private static bool IsWarped(Offcut offcut) => !offcut.Cup.IsZero || !offcut.Bow.IsZero || !offcut.Twist.IsZero;

    private static bool MustBeJointed(Offcut offcut) => offcut.Faces == Faces.Rough || IsWarped(offcut);

    private static bool MustBePlaned(Offcut offcut) => offcut.Faces != Faces.BothSurfaced || IsWarped(offcut);

    private static bool FacesDone(LivePiece piece, Offcut offcut) =>
        (piece.FaceJointed || !MustBeJointed(offcut)) && (piece.FacePlaned || !MustBePlaned(offcut));

    private static bool IsMilled(LivePiece piece, Offcut offcut) => FacesDone(piece, offcut) && piece.LowerEdge && piece.UpperEdge && (piece.Layers == 1 || piece.Cleaned);
}
