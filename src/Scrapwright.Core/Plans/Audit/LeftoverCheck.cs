using System.Numerics;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>What is left in the end, where it goes, and that no wood came or went.</summary>
internal sealed class LeftoverCheck(Facts facts, Findings findings)
{
    /// <summary>Looks at leftovers and ledger.</summary>
    public void Check(Stock stock)
    {
        var rest = stock.All.Where(p => p.Rod is null && !facts.PartByPiece.ContainsKey(p.Piece.Id)).ToArray();
        CheckLeftovers(rest);
        CheckLedger(stock, rest);
    }

    private void CheckLeftovers(LivePiece[] rest)
    {
        var order = facts.Wood.Select((o, i) => (o.Label, i)).ToDictionary(o => o.Label, o => o.i, StringComparer.Ordinal);
        var expected = rest.OrderBy(p => p.Piece.Lanes is [var lane, ..] ? order.GetValueOrDefault(lane.Offcut) : int.MaxValue).ThenBy(p => p.Born).ToArray();
        var listed = facts.Plan.Leftovers;
        if (!findings.Same("leftovers", listed.Select(l => l.Piece.Id), expected.Select(p => p.Piece.Id)))
        {
            return;
        }

        foreach (var (found, live) in listed.Zip(expected))
        {
            var where = $"leftover {live.Piece.Id}";
            findings.Equal(where + " length", found.Piece.Length, live.Piece.Length);
            findings.Equal(where + " width", found.Piece.Width, live.Piece.Width);
            findings.Equal(where + " thickness", found.Piece.Thickness, live.Piece.Thickness);
            findings.Same(where + " lanes", found.Piece.Lanes, live.Piece.Lanes);
            findings.Equal(where + " place", found.Place, PlaceOf(live));
        }
    }

    private LeftoverPlace PlaceOf(LivePiece live)
    {
        var shop = facts.Shop;
        var isLarge = live.Piece.Length >= shop.KeepLength && live.Piece.Width >= shop.KeepWidth && live.Piece.Thickness >= shop.KeepThickness;
        return isLarge && !(live.IsCrosscut && WoodFlaws.Touch(live, facts)) ? LeftoverPlace.Pile : LeftoverPlace.ScrapBin;
    }

    private void CheckLedger(Stock stock, LivePiece[] rest)
    {
        var ledger = facts.Plan.Ledger;
        if (!findings.Same("ledger rows", ledger.Select(r => r.Offcut), facts.Wood.Select(o => o.Label)))
        {
            return;
        }

        var parts = stock.All.Where(p => facts.PartByPiece.ContainsKey(p.Piece.Id)).ToArray();
        foreach (var (row, offcut) in ledger.Zip(facts.Wood))
        {
            var where = $"ledger of {row.Offcut}";
            var whole = (BigInteger)offcut.Length.Picometres * offcut.Width.Picometres * offcut.Thickness.Picometres;
            var inParts = SumOf(parts, row.Offcut);
            var kept = SumOf(rest.Where(p => PlaceOf(p) == LeftoverPlace.Pile), row.Offcut);
            var scrap = SumOf(rest.Where(p => PlaceOf(p) == LeftoverPlace.ScrapBin), row.Offcut);
            findings.Equal(where + " in", Of(row.In), whole);
            findings.Equal(where + " faced", Of(row.Faced), stock.FacedOf(row.Offcut));
            findings.Equal(where + " parts", Of(row.Parts), inParts);
            findings.Equal(where + " kept", Of(row.Kept), kept);
            findings.Equal(where + " scrap", Of(row.Scrap), scrap);
            var waste = Enum.GetValues<Operation>().Select(o => (o, stock.LostOf(row.Offcut, o))).Where(w => !w.Item2.IsZero).ToArray();
            findings.Same(where + " waste", row.Waste.Select(w => (w.Operation, Of(w.Volume))), waste);
            var listed = row.Waste.Aggregate(Of(row.Faced) + Of(row.Parts) + Of(row.Kept) + Of(row.Scrap), (sum, w) => sum + Of(w.Volume));
            findings.Equal(where + " sum", listed, Of(row.In));
        }

        foreach (var board in facts.Plan.Faced.Where(b => facts.FacedByLabel.ContainsKey(b.Label)))
        {
            var halves = ledger.Where(r => r.Offcut == board.Upper || r.Offcut == board.Lower).Aggregate(BigInteger.Zero, (sum, r) => sum + Of(r.Faced));
            findings.Equal($"ledger of {board.Label} in, from its offcuts", halves, Of(ledger.First(r => r.Offcut == board.Label).In));
        }
    }

    private static BigInteger SumOf(IEnumerable<LivePiece> pieces, string offcut) =>
        pieces.Aggregate(BigInteger.Zero, (sum, p) => sum + Stock.VolumeOf(p.Piece, offcut));

    private static BigInteger Of(Volume volume) => volume.CubicPicometres;
}
