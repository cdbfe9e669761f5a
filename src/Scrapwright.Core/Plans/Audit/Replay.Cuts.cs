using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Audit;

internal sealed partial class Replay
{
    private void Crosscut(Operation operation, Work work, LivePiece piece, string where)
    {
        CheckSum(work, piece.Piece.Length, p => p.Length, Shop.TableSaw.Kerf, where);
        foreach (var cut in work.Out)
        {
            CheckPiece(where, cut, piece.Piece with { Id = cut.Id, Length = cut.Length });
        }

        CheckWay(operation, work, piece.Piece.Length, piece.Piece.Width, piece.Piece.Thickness, where);
        var set = work.Out.FirstOrDefault(p => facts.IsUsedAfter(p.Id, workIndex)) ?? work.Out[0];
        findings.Equal(where + " setting", work.Setting, set.Length);
        if (operation == Operation.CrosscutBlanks)
        {
            CheckBlanks(work, piece, where);
        }
        else
        {
            CheckRest(work, where);
            if (OffcutOf(piece, where, out var offcut))
            {
                var raw = !piece.FaceJointed && !piece.FacePlaned && !piece.LowerEdge && !piece.UpperEdge;
                findings.Require(operation != Operation.RoughCrosscut || raw, where, $"{piece.Piece.Id} is milled", "a piece before milling");
                findings.Require(operation != Operation.CrosscutStrips || IsMilled(piece, offcut), where, $"{piece.Piece.Id} is not milled on faces and edges", "a milled strip");
            }
        }

        var at = piece.From + work.TakenFirst;
        var children = new List<LivePiece>();
        foreach (var cut in work.Out)
        {
            var child = piece.Child(cut, Stock.NextBorn());
            child.From = at;
            child.IsCrosscut = true;
            child.Blanked = operation == Operation.CrosscutBlanks;
            children.Add(child);
            at += cut.Length + work.Kerf;
        }

        Stock.Replace(where, [piece], children, operation);
    }

    private void CheckBlanks(Work work, LivePiece piece, string where)
    {
        if (piece.Panel is { } glueUp)
        {
            findings.Require(piece is { Planed: true, BeforeTrim: not null }, where, $"{piece.Piece.Id} is not planed and trimmed", "a panel planed and trimmed");
            if (facts.FindPart(glueUp.Gift, glueUp.Part) is { } part)
            {
                CheckLengths(work, [.. Enumerable.Repeat(part.Length, glueUp.Blanks)], where);
            }
        }
        else if (facts.BoardByPiece.TryGetValue(piece.Piece.Id, out var board))
        {
            piece.Board = board;
            findings.Require(boarded.Add(board.Piece), where, $"{board.Piece} is cut twice", "one cut");
            new BoardCheck(facts, findings).Check(board, piece);
            Chances.Note(board, piece);
            if (facts.Plan.Made.Any(m => m.Gift == board.Gift))
            {
                CheckMembers(work, board, where);
            }
        }
        else
        {
            findings.Add(where, piece.Piece.Id, "a panel or the strip of a board run");
        }

        CheckEnds(work, where);
    }

    private void CheckMembers(Work work, BoardRun board, string where)
    {
        if (facts.FindRun(board.Gift, board.Run) is not { } run)
        {
            return;
        }

        CheckLengths(work, [.. run.Members.Select(m => facts.FindPart(board.Gift, m.Part)?.Length ?? default)], where);
        var members = work.Out.Take(run.Members.Length)
            .Select(p => facts.PartByPiece.TryGetValue(p.Id, out var made) ? $"{made.Gift} {made.Part.Part} {made.Part.Copy}" : $"{p.Id} is no part");
        findings.Same($"{where} parts along board {board.Piece}", members, run.Members.Select(m => $"{board.Gift} {m.Part} {m.Copy}"));
    }

    private void CheckLengths(Work work, Length[] lengths, string where)
    {
        findings.Same(where + " lengths of the blanks", work.Out.Take(lengths.Length).Select(p => p.Length), lengths);
        findings.Require(work.Out.Length - lengths.Length is 0 or 1, where, $"{work.Out.Length} pieces", $"{lengths.Length} and one remainder at most");
        var last = work.Taken - work.TakenFirst;
        if (work.Out.Length > lengths.Length)
        {
            findings.Equal(where + " taken off the far end", last, Length.Zero);
        }
        else
        {
            findings.Require(last >= Shop.Allowances.EndTrim.Mean, where + " taken off the far end", last, $"at least {Shop.Allowances.EndTrim.Mean}");
            findings.Require(last - work.Kerf < Shop.KeepLength, where + " taken off the far end", last, $"a remainder to keep, being {Shop.KeepLength} or more");
        }
    }

    private void CheckEnds(Work work, string where)
    {
        findings.Equal(where + " taken off the marked end", work.TakenFirst, Shop.Allowances.EndTrim.Mean);
        findings.Require(work.TakenFirst <= work.Taken, where + " taken", work.Taken, $"at least {work.TakenFirst}");
    }

    private void Rip(Operation operation, Work work, LivePiece piece, string where)
    {
        CheckSum(work, piece.Piece.Width, p => p.Width, operation == Operation.Rip ? Shop.TableSaw.Kerf : Shop.Bandsaw.Kerf, where);
        CheckRest(work, where);
        findings.Equal(where + " setting", work.Setting, work.Out[0].Width);
        CheckWay(operation, work, piece.Piece.Length, work.Out.Min(p => p.Width), piece.Piece.Thickness, where);
        if (!OffcutOf(piece, where, out var offcut))
        {
            return;
        }

        if (operation == Operation.Rip)
        {
            findings.Require(FacesDone(piece, offcut) && piece.LowerEdge, where, $"{piece.Piece.Id} has no flat faces and straight lower edge", "a piece milled on its faces and lower edge");
        }
        else
        {
            findings.Require(!piece.FaceJointed && !piece.FacePlaned && !piece.LowerEdge, where, $"{piece.Piece.Id} is milled", "a piece before milling");
        }

        var children = new List<LivePiece>();
        var unknown = Length.Max(Length.Zero, piece.AcrossTo - piece.AcrossFrom - piece.Piece.Width);
        var at = piece.AcrossFrom;
        for (var i = 0; i < work.Out.Length; i++)
        {
            var lane = work.Out[i];
            CheckPiece(where, lane, piece.Piece with { Id = lane.Id, Width = lane.Width, Lanes = [new Lane(offcut.Label, lane.Width)] });
            var child = piece.Child(lane, Stock.NextBorn());
            child.LowerEdge = i == 0 && piece.LowerEdge;
            child.AcrossFrom = at;
            child.AcrossTo = at + lane.Width + unknown;
            at += lane.Width + work.Kerf;
            child.EdgeWorks = i == work.Out.Length - 1 ? piece.EdgeWorks : [];
            child.UpperEdge = i == work.Out.Length - 1 && piece.UpperEdge && work.Taken.IsZero;
            children.Add(child);
        }

        Stock.Replace(where, [piece], children, operation);
    }

    private void Resaw(Work work, LivePiece piece, string where)
    {
        findings.Require(piece is { Panel: not null, Flattened: true, Resawn: false, Planed: false }, where, $"{piece.Piece.Id} is no flattened panel", "a panel, flattened, in one piece");
        findings.Equal(where + " layers", work.Out.Length, piece.Panel?.Layers ?? 1);
        SawIntoLayers(Operation.Resaw, work, piece, where, (child, _) => child.Resawn = true);
    }

    private void ResawStrip(Work work, LivePiece piece, string where)
    {
        findings.Require(work.Out.Length > 1, where, "one layer", "two or more");
        if (OffcutOf(piece, where, out var offcut))
        {
            findings.Require(IsMilled(piece, offcut) && piece.Layers == 1, where, $"{piece.Piece.Id} is not milled on faces and edges, or resawn before", "a milled strip, once");
        }

        SawIntoLayers(Operation.ResawStrips, work, piece, where, (child, layer) =>
        {
            child.Layers = work.Out.Length;
            child.Stick = workIndex;
            child.Layer = layer;
        });
    }

    private void SawIntoLayers(Operation operation, Work work, LivePiece piece, string where, Action<LivePiece, int> mark)
    {
        CheckSum(work, piece.Piece.Thickness, p => p.Thickness, Shop.Bandsaw.Kerf, where);
        findings.Equal(where + " taken", work.Taken, Length.Zero);
        findings.Equal(where + " taken first", work.TakenFirst, Length.Zero);
        findings.Equal(where + " setting", work.Setting, work.Out[0].Thickness);
        CheckWay(operation, work, piece.Piece.Length, piece.Piece.Width, piece.Piece.Thickness, where);
        var share = (piece.Piece.Thickness - (Shop.Bandsaw.Kerf * (work.Out.Length - 1))).Divide(work.Out.Length, Rounding.Down);
        var children = new List<LivePiece>();
        foreach (var layer in work.Out)
        {
            CheckPiece(where, layer, piece.Piece with { Id = layer.Id, Thickness = layer.Thickness });
            findings.Require(layer.Thickness >= share, $"{where} piece {layer.Id} thickness", layer.Thickness, $"at least {share}");
            var child = piece.Child(layer, Stock.NextBorn());
            child.FaceWorks = ReferenceEquals(layer, work.Out[^1]) ? piece.FaceWorks : [];
            mark(child, children.Count);
            children.Add(child);
        }

        Stock.Replace(where, [piece], children, operation);
    }

    /// <summary>The size cut is what is taken, the kerfs and the outputs.</summary>
    private void CheckSum(Work work, Length cut, Func<Piece, Length> size, Length kerf, string where)
    {
        findings.Equal(where + " kerf", work.Kerf, kerf);
        findings.Equal(where + " cuts", work.Cuts, work.Out.Length - 1);
        findings.Equal(where + " sum of outputs, kerfs and what is taken", Length.Sum(work.Out.Select(size)) + (work.Kerf * work.Cuts) + work.Taken, cut);
    }

    /// <summary>Only a rest too small to be a piece may vanish in the saw.</summary>
    private void CheckRest(Work work, string where)
    {
        findings.Require(work.Taken <= work.Kerf, where + " taken", work.Taken, $"at most the kerf, {work.Kerf}");
        findings.Equal(where + " taken first", work.TakenFirst, Length.Zero);
    }
}
