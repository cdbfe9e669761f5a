using System.Numerics;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>The pieces there are at one moment of the replay, and the wood lost so far.</summary>
internal sealed class Stock
{
    private readonly Findings findings;
    private readonly Dictionary<string, LivePiece> live = new(StringComparer.Ordinal);
    private readonly HashSet<string> spent = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Offcut, Operation Operation), BigInteger> lost = [];
    private readonly Dictionary<string, BigInteger> faced = new(StringComparer.Ordinal);
    private int born;

    /// <summary>Begins with every single offcut.</summary>
    public Stock(Facts facts, Findings findings)
    {
        this.findings = findings;
        foreach (var offcut in facts.Offcuts)
        {
            var piece = new Piece(offcut.Label, offcut.Length, offcut.Width, offcut.Thickness, [new Lane(offcut.Label, offcut.Width)]);
            live[offcut.Label] = new LivePiece(piece, NextBorn());
        }
    }

    /// <summary>Every piece there is.</summary>
    public IEnumerable<LivePiece> All => live.Values;

    /// <summary>The piece with that id, or null.</summary>
    public LivePiece? Find(string id) => live.GetValueOrDefault(id);

    /// <summary>A number for a piece that comes up now.</summary>
    public int NextBorn() => born++;

    /// <summary>The pieces going into a work; null when one is not there, or goes in twice.</summary>
    public LivePiece[]? FindAll(string where, IReadOnlyList<string> ids)
    {
        var found = new List<LivePiece>();
        foreach (var id in ids)
        {
            if (Find(id) is { } piece && !found.Contains(piece))
            {
                found.Add(piece);
            }
            else
            {
                findings.Add(where, $"piece {id} {(spent.Contains(id) ? "is used up" : found.Exists(p => p.Piece.Id == id) ? "goes in twice" : "does not exist")}", "a piece that is there");
            }
        }

        return found.Count == ids.Count ? [.. found] : null;
    }

    /// <summary>A piece changes size without being cut.</summary>
    public void Change(LivePiece piece, Piece after, Operation operation)
    {
        Lose(operation, [piece.Piece], [after]);
        piece.Piece = after;
    }

    /// <summary>Pieces are cut or glued into others.</summary>
    public void Replace(string where, IReadOnlyList<LivePiece> gone, IReadOnlyList<LivePiece> come, Operation operation)
    {
        Lose(operation, gone.Select(g => g.Piece), come.Select(c => c.Piece));
        foreach (var piece in gone)
        {
            live.Remove(piece.Piece.Id);
        }

        foreach (var piece in come)
        {
            Add(where, piece);
        }

        foreach (var piece in gone)
        {
            if (!live.ContainsKey(piece.Piece.Id))
            {
                spent.Add(piece.Piece.Id);
            }
        }
    }

    /// <summary>Two offcuts become a board: what both have in common is in it, each with its own thickness; what sticks out is lost.</summary>
    public void Face(string where, IReadOnlyList<LivePiece> halves, LivePiece board)
    {
        foreach (var half in halves)
        {
            var inBoard = (BigInteger)board.Piece.Length.Picometres * board.Piece.Width.Picometres * half.Piece.Thickness.Picometres;
            faced[half.Piece.Id] = FacedOf(half.Piece.Id) + inBoard;
            lost[(half.Piece.Id, Operation.FaceGlue)] = LostOf(half.Piece.Id, Operation.FaceGlue) + VolumeOf(half.Piece, half.Piece.Id) - inBoard;
            live.Remove(half.Piece.Id);
            spent.Add(half.Piece.Id);
        }

        Add(where, board);
    }

    /// <summary>What of an offcut is in a board glued face to face. [pm³]</summary>
    public BigInteger FacedOf(string offcut) => faced.GetValueOrDefault(offcut);

    /// <summary>A piece comes up that was not cut from the pile.</summary>
    public void Add(string where, LivePiece piece)
    {
        var isNew = !spent.Contains(piece.Piece.Id) && live.TryAdd(piece.Piece.Id, piece);
        findings.Require(isNew, where, $"piece id {piece.Piece.Id} again", "an id that was never used");
    }

    /// <summary>What an operation lost of an offcut. [pm³]</summary>
    public BigInteger LostOf(string offcut, Operation operation) => lost.GetValueOrDefault((offcut, operation));

    /// <summary>Volume of the part of a piece that came from an offcut. [pm³]</summary>
    public static BigInteger VolumeOf(Piece piece, string offcut) =>
        piece.Lanes.Where(l => l.Offcut == offcut).Aggregate(BigInteger.Zero, (sum, lane) => sum + LaneVolume(piece, lane));

    private static BigInteger LaneVolume(Piece piece, Lane lane) =>
        (BigInteger)piece.Length.Picometres * lane.Width.Picometres * piece.Thickness.Picometres;

    private void Lose(Operation operation, IEnumerable<Piece> before, IEnumerable<Piece> after)
    {
        foreach (var piece in before)
        {
            foreach (var lane in piece.Lanes)
            {
                lost[(lane.Offcut, operation)] = LostOf(lane.Offcut, operation) + LaneVolume(piece, lane);
            }
        }

        foreach (var piece in after)
        {
            foreach (var lane in piece.Lanes)
            {
                lost[(lane.Offcut, operation)] = LostOf(lane.Offcut, operation) - LaneVolume(piece, lane);
            }
        }
    }
}
