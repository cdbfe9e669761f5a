using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Audit;

internal sealed partial class Replay
{
    private void Assembly(Step step, Work work, string where)
    {
        foreach (var (name, found) in (ReadOnlySpan<(string, Length)>)[("taken first", work.TakenFirst), ("setting", work.Setting)])
        {
            findings.Equal($"{where} {name}", found, Length.Zero);
        }

        findings.Equal(where + " way of working", work.Workaround, Workaround.None);
        if (step.Operation == Operation.CutRods)
        {
            CutRod(work, where);
            return;
        }

        CheckNoCut(work, where);
        if (!findings.Same(where + " pieces", work.Out.Select(p => p.Id), work.In) || Stock.FindAll(where, work.In) is not { } pieces)
        {
            return;
        }

        var sanded = Shop.Allowances.Sand.Mean * 2;
        for (var i = 0; i < pieces.Length; i++)
        {
            var isRod = facts.PartByPiece.TryGetValue(pieces[i].Piece.Id, out var made) && facts.FindPart(made.Gift, made.Part.Part)?.Kind == PartKind.Rod;
            var taken = step.Operation == Operation.Sand && !isRod ? sanded : Length.Zero;
            findings.Equal(where + " taken", work.Taken, taken);
            CheckPiece(where, work.Out[i], pieces[i].Piece with { Thickness = pieces[i].Piece.Thickness - taken });
            Stock.Change(pieces[i], work.Out[i], step.Operation);
        }

        findings.Require(pieces.Length > 0 || work.Taken.IsZero, where + " taken", work.Taken, Length.Zero);
    }

    private void CutRod(Work work, string where)
    {
        findings.Equal(where + " kerf", work.Kerf, Shop.TableSaw.Kerf);
        findings.Equal(where + " cuts", work.Cuts, work.Out.Length);
        findings.Equal(where + " taken", work.Taken, Length.Zero);
        if (work.In is not [var id] || !facts.RodById.TryGetValue(id, out var rod))
        {
            findings.Add(where, string.Join(", ", work.In), "one rod of the plan");
            return;
        }

        foreach (var piece in work.Out)
        {
            CheckPiece(where, piece, new Piece(piece.Id, piece.Length, rod.Diameter, rod.Diameter, []));
            Stock.Add(where, new LivePiece(piece, Stock.NextBorn()) { Rod = rod });
        }
    }
}
