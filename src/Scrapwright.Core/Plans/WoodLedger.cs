using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans;

/// <summary>Where the wood of every single offcut went, added up from a plan's steps, parts and leftovers.</summary>
internal static class WoodLedger
{
    /// <summary>The ledger's rows, in the pile's order.</summary>
    public static ImmutableArray<LedgerRow> Of(Plan plan)
    {
        var last = new Dictionary<string, Piece>(StringComparer.Ordinal);
        var offcuts = plan.Stock();
        foreach (var o in offcuts) last[o.Label] = new(o.Label, o.Length, o.Width, o.Thickness, [new(o.Label, o.Width)]);
        var waste = new Dictionary<(string Offcut, Operation Operation), Volume>();
        var faced = new Dictionary<string, Volume>(StringComparer.Ordinal);
        foreach (var step in plan.Steps)
        {
            foreach (var work in step.Works)
            {
                foreach (var id in work.In)
                    if (last.TryGetValue(id, out var piece)) Add(waste, piece, step.Operation, sign: 1);
                if (step.Operation == Operation.FaceGlue)
                {
                    GlueFaces(work);
                    continue;
                }

                foreach (var piece in work.Out)
                {
                    Add(waste, piece, step.Operation, sign: -1);
                    last[piece.Id] = piece;
                }
            }
        }

        var parts = Sum(plan.Made.SelectMany(m => m.Parts).Select(p => last[p.Piece]));
        var kept = Sum(plan.Leftovers.Where(l => l.Place == LeftoverPlace.Pile).Select(l => l.Piece));
        var scrap = Sum(plan.Leftovers.Where(l => l.Place == LeftoverPlace.ScrapBin).Select(l => l.Piece));
        return
        [
            .. offcuts.Select(o => new LedgerRow
            {
                Offcut = o.Label,
                In = Volume.Of(o.Length, o.Width, o.Thickness),
                Faced = faced.GetValueOrDefault(o.Label),
                Parts = parts.GetValueOrDefault(o.Label),
                Kept = kept.GetValueOrDefault(o.Label),
                Scrap = scrap.GetValueOrDefault(o.Label),
                Waste = [.. Enum.GetValues<Operation>().Select(op => new WasteRow(op, waste.GetValueOrDefault((o.Label, op)))).Where(r => r.Volume != Volume.Zero)],
            }),
        ];

        // What both have in common goes into the board; what sticks out is lost.
        void GlueFaces(Work work)
        {
            var board = work.Out[0];
            foreach (var half in work.In.Select(id => last[id]))
            {
                var inBoard = Volume.Of(board.Length, board.Width, half.Thickness);
                faced[half.Id] = inBoard;
                waste[(half.Id, Operation.FaceGlue)] = waste[(half.Id, Operation.FaceGlue)] - inBoard;
            }

            last[board.Id] = board;
        }
    }

    private static void Add(Dictionary<(string, Operation), Volume> waste, Piece piece, Operation operation, int sign)
    {
        foreach (var (offcut, volume) in Shares(piece))
        {
            var before = waste.GetValueOrDefault((offcut, operation));
            waste[(offcut, operation)] = sign > 0 ? before + volume : before - volume;
        }
    }

    private static Dictionary<string, Volume> Sum(IEnumerable<Piece> pieces) =>
        pieces.SelectMany(Shares).GroupBy(x => x.Offcut, StringComparer.Ordinal).ToDictionary(g => g.Key, g => Volume.Sum(g.Select(x => x.Volume)), StringComparer.Ordinal);

    private static IEnumerable<(string Offcut, Volume Volume)> Shares(Piece piece) =>
        piece.Lanes.Select(l => (l.Offcut, Volume.Of(piece.Length, l.Width, piece.Thickness)));
}
