using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Choices;

/// <summary>How a single offcut was milled, ripped and crosscut.</summary>
/// <param name="Offcut">Label of the single offcut.</param>
/// <param name="Way">Order of work.</param>
/// <param name="Lanes">Its lanes, lower edge first; the layers of a strip that is resawn before it is glued follow each other.</param>
public sealed record MilledOffcut(string Offcut, MilledWay Way, ImmutableArray<MilledLane> Lanes)
{
    /// <summary>Into how many layers its strips are sawn; 1 for none.</summary>
    public int Layers { get; init; } = 1;

    /// <summary>How a plan mills an offcut, every lane with its pieces.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="offcut">One of its single offcuts, used by it.</param>
    public static MilledOffcut Of(Plan plan, Offcut offcut)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(offcut);
        if (Find(plan, Operation.RoughCrosscut, offcut.Label) is { } crosscut)
        {
            return new(offcut.Label, MilledWay.CrosscutFirst, [new(offcut.Width, PiecesOf(crosscut))]);
        }

        var (way, strips) = Ripped(plan, offcut);
        var layers = strips.Select(s => Find(plan, Operation.ResawStrips, s.Id)?.Out.Length ?? 1).Max();
        return new(offcut.Label, way, [.. strips.SelectMany(LanesOf)]) { Layers = layers };

        IEnumerable<MilledLane> LanesOf((string Id, Length Length, Length RoughWidth) strip) => layers == 1
            ? [LaneOf(strip.Id, strip.Length, strip.RoughWidth)]
            : Find(plan, Operation.ResawStrips, strip.Id) is { } resaw
                ? resaw.Out.Select(layer => LaneOf(layer.Id, layer.Length, strip.RoughWidth))
                : Enumerable.Repeat(new MilledLane(strip.RoughWidth, []), layers);

        MilledLane LaneOf(string id, Length length, Length roughWidth) => new(
            roughWidth, Find(plan, Operation.CrosscutStrips, id) is { } cut ? PiecesOf(cut) : [new(id, length)]);
    }

    /// <summary>The same, of every lane without one of the given pieces only that it is there.</summary>
    public MilledOffcut Keeping(IReadOnlySet<string> pieces)
    {
        ArgumentNullException.ThrowIfNull(pieces);
        return this with { Lanes = [.. Lanes.Select(lane => lane.Pieces.Any(p => pieces.Contains(p.Piece)) ? lane : lane with { Pieces = [] })] };
    }

    /// <summary>True when lanes, pieces and kerfs are the whole offcut.</summary>
    public bool Fits(Offcut offcut, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(offcut);
        ArgumentNullException.ThrowIfNull(shop);
        var kerf = Way == MilledWay.RippedFirst ? shop.Bandsaw.Kerf : shop.TableSaw.Kerf;
        if (Lanes.IsEmpty || Layers is < 1 or > 100 || Lanes.Length % Layers != 0) return false;
        var strips = Lanes.Where((_, i) => i % Layers == 0).Select(l => l.RoughWidth).ToList();
        return Length.Sum(strips) + (kerf * (strips.Count - 1)) == offcut.Width
            && Lanes.All(l => l.Pieces.IsEmpty
                || Length.Sum(l.Pieces.Select(p => p.Length)) + (shop.TableSaw.Kerf * (l.Pieces.Length - 1)) == offcut.Length);
    }

    private static (MilledWay Way, List<(string Id, Length Length, Length RoughWidth)> Strips) Ripped(Plan plan, Offcut offcut)
    {
        if (Find(plan, Operation.RoughRip, offcut.Label) is { } rough)
        {
            return (MilledWay.RippedFirst, [.. rough.Out.Select(s => (s.Id, s.Length, s.Width))]);
        }

        // One edge was jointed before the first strip was ripped off it.
        var edge = plan.Request.Shop.Allowances.EdgeJoint.Mean;
        return (MilledWay.Whole, Find(plan, Operation.Rip, offcut.Label) is { } rip
            ? [.. rip.Out.Select((s, i) => (s.Id, s.Length, i == 0 ? s.Width + edge : s.Width))]
            : [(offcut.Label, offcut.Length, offcut.Width)]);
    }

    private static Work? Find(Plan plan, Operation operation, string piece) =>
        plan.Steps.Where(s => s.Operation == operation).SelectMany(s => s.Works).FirstOrDefault(w => w.In is [var only] && only == piece);

    private static ImmutableArray<MilledPiece> PiecesOf(Work crosscut) => [.. crosscut.Out.Select(p => new MilledPiece(p.Id, p.Length))];
}
