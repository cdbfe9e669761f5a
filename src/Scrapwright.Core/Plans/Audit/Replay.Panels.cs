using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Audit;

internal sealed partial class Replay
{
    private void Glue(Step step, Work work, string where)
    {
        if (!findings.Equal(where + " pieces coming out", work.Out.Length, 1)
            || !findings.Require(!work.In.IsEmpty, where, "no strips", "one or more")
            || Stock.FindAll(where, work.In) is not { } strips)
        {
            return;
        }

        var panel = work.Out[0];
        if (!facts.GlueUpById.TryGetValue(panel.Id, out var glueUp))
        {
            findings.Add(where, panel.Id, "a glue-up of the plan");
            return;
        }

        findings.Require(glued.Add(glueUp.Id), where, $"{glueUp.Id} is glued twice", "once");
        findings.Equal(where + " glue-up", step.GlueUp, glueUp.Id);
        findings.Equal(where + " gift", step.Gift, glueUp.Gift);
        findings.Same(where + " strips in order", work.In, glueUp.Strips.Select(s => s.Piece));
        var thickness = strips[0].Piece.Thickness;
        foreach (var strip in strips)
        {
            findings.Equal($"{where} strip {strip.Piece.Id} thickness", strip.Piece.Thickness, thickness);
            if (OffcutOf(strip, where, out var offcut))
            {
                findings.Require(IsMilled(strip, offcut), where, $"strip {strip.Piece.Id} is not milled", "flat faces and two straight edges");
                findings.Require(!HasDefect(strip), where, $"strip {strip.Piece.Id} has a defect", "sound wood");
            }
        }

        CheckPiece(where, panel, new Piece(
            glueUp.Id,
            strips.Min(s => s.Piece.Length),
            Length.Sum(strips.Select(s => s.Piece.Width)),
            thickness,
            [.. strips.SelectMany(s => s.Piece.Lanes)]));
        foreach (var (name, found) in (ReadOnlySpan<(string, Length)>)[("taken", work.Taken), ("taken first", work.TakenFirst), ("setting", work.Setting)])
        {
            findings.Equal($"{where} {name}", found, Length.Zero);
        }

        CheckNoCut(work, where);
        findings.Equal(where + " way of working", work.Workaround, Workaround.None);
        new GlueUpCheck(facts, findings).Check(glueUp, strips);
        Chances.Note(glueUp, strips);
        Stock.Replace(where, strips, [new LivePiece(panel, Stock.NextBorn()) { Panel = glueUp }], Operation.GlueUp);
    }

    private Piece? FlattenPanel(LivePiece piece, string where)
    {
        findings.Require(piece is { Panel: not null, Flattened: false }, where, piece.Piece.Id, "a panel that is not flattened yet");
        piece.Flattened = true;
        return piece.Piece with { Thickness = piece.Piece.Thickness - Shop.Allowances.PanelFlatten.Mean };
    }

    private Piece? PlanePanel(LivePiece piece, string where)
    {
        if (piece.Panel is not { } glueUp || facts.FindPart(glueUp.Gift, glueUp.Part) is not { } part)
        {
            findings.Add(where, piece.Piece.Id, "a panel");
            return null;
        }

        findings.Require(piece is { Flattened: true, Planed: false }, where, $"{piece.Piece.Id} is not flattened, or planed already", "a flattened panel, once");
        findings.Require(piece.Resawn || glueUp.Layers == 1, where, $"{piece.Piece.Id} is not resawn", $"{glueUp.Layers} layers");
        piece.Planed = true;
        return piece.Piece with { Thickness = part.Thickness + (Shop.Allowances.Sand.Mean * 2) };
    }

    private Piece? TrimWidth(LivePiece piece, string where)
    {
        var before = piece.Piece;
        Length? target = null;
        if (piece.Panel is { } glueUp)
        {
            findings.Require(piece.Planed, where, $"{before.Id} is not planed", "a planed panel");
            target = facts.FindPart(glueUp.Gift, glueUp.Part)?.Width;
        }
        else if (facts.BoardByPiece.TryGetValue(before.Id, out var board)
            && facts.FindRun(board.Gift, board.Run) is { Members: [var first, ..] } && OffcutOf(piece, where, out var offcut))
        {
            findings.Require(IsMilled(piece, offcut), where, $"{before.Id} is not milled", "flat faces and two straight edges");
            findings.Require(!HasDefect(piece), where, $"{before.Id} has a defect", "sound wood");
            target = facts.FindPart(board.Gift, first.Part)?.Width;
        }

        if (target is not { } width)
        {
            findings.Add(where, before.Id, "a panel or the strip of a board run");
            return null;
        }

        findings.Require(piece.BeforeTrim is null, where, $"{before.Id} is trimmed twice", "once");
        piece.BeforeTrim ??= before.Width;
        var taken = before.Width - width;
        var lower = taken.IsNegative ? Length.Zero : taken.Divide(2, Rounding.Down);
        return before with { Width = width, Lanes = Narrowed(before.Lanes, lower, Length.Max(taken, Length.Zero) - lower) };
    }

    /// <summary>Lanes after some width is taken off the lower and the upper edge; lanes that vanish are left out.</summary>
    private static ImmutableArray<Lane> Narrowed(ImmutableArray<Lane> lanes, Length lower, Length upper)
    {
        var first = Off(lanes, lower);
        return [.. Off(first.Reverse(), upper).Reverse()];

        static IEnumerable<Lane> Off(IEnumerable<Lane> lanes, Length off)
        {
            foreach (var lane in lanes)
            {
                var here = Length.Min(off, lane.Width);
                off -= here;
                if (lane.Width > here)
                {
                    yield return lane with { Width = lane.Width - here };
                }
            }
        }
    }
}
