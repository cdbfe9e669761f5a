using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Building;

/// <summary>Takes down what is done to each piece, stage by stage, and keeps the wood's ledger.</summary>
internal sealed class Bench(Shop shop)
{
    private readonly Dictionary<Stage, ImmutableArray<Work>.Builder> works = [];
    private readonly Dictionary<(string Offcut, Operation Operation), Volume> waste = [];
    private readonly Dictionary<string, Volume> faced = new(StringComparer.Ordinal);

    /// <summary>Works of a stage so far; empty when there are none.</summary>
    internal ImmutableArray<Work> Works(Stage stage) => works.TryGetValue(stage, out var list) ? list.ToImmutable() : [];

    /// <summary>Waste of one offcut by operation, zero rows left out.</summary>
    internal ImmutableArray<WasteRow> Waste(string offcut) =>
        [.. Enum.GetValues<Operation>()
            .Select(o => new WasteRow(o, waste.GetValueOrDefault((offcut, o))))
            .Where(r => r.Volume != Volume.Zero)];

    /// <summary>Takes wood off a face.</summary>
    internal Piece TakeThickness(Stage stage, Piece piece, Length taken)
    {
        if (taken == Length.Zero)
        {
            return piece;
        }

        var after = piece with { Thickness = piece.Thickness - taken };
        Note(stage, [piece], new Work
        {
            In = [piece.Id],
            Out = [after],
            Taken = taken,
            Setting = after.Thickness,
            Workaround = Way(stage.Operation, piece.Length, piece.Width, after.Thickness),
        });
        return after;
    }

    /// <summary>Takes wood off the edges of a piece that comes from one offcut.</summary>
    internal Piece TakeEdges(Stage stage, Piece piece, Length taken)
    {
        var width = piece.Width - taken;
        var after = piece with { Width = width, Lanes = [piece.Lanes[0] with { Width = width }] };
        Note(stage, [piece], new Work
        {
            In = [piece.Id],
            Out = [after],
            Taken = taken,
            Setting = width,
            Workaround = Way(stage.Operation, piece.Length, piece.Width, piece.Thickness),
        });
        return after;
    }

    /// <summary>Trims both outer edges to a width; lanes at the edges shrink or go.</summary>
    internal Piece TrimWidth(Stage stage, Piece piece, Length width)
    {
        var taken = piece.Width - width;
        if (taken == Length.Zero)
        {
            return piece;
        }

        var first = taken.Divide(2, Rounding.Down);
        var lanes = Shrink(Shrink(piece.Lanes, first).Reverse(), taken - first).Reverse();
        var after = piece with { Width = width, Lanes = [.. lanes] };
        Note(stage, [piece], new Work
        {
            In = [piece.Id],
            Out = [after],
            Taken = taken,
            TakenFirst = first,
            Setting = width,
            Workaround = Way(stage.Operation, piece.Length, width, piece.Thickness),
        });
        return after;
    }

    /// <summary>Rips a piece of one offcut into lanes; the widths and the kerfs between them are the whole width.</summary>
    internal ImmutableArray<Piece> Rip(Stage stage, Piece piece, ImmutableArray<Length> widths, Length kerf)
    {
        ImmutableArray<Piece> lanes =
        [
            .. widths.Select((w, i) => piece with
            {
                Id = $"{piece.Id}.{i + 1}", Width = w, Lanes = [piece.Lanes[0] with { Width = w }],
            }),
        ];
        Note(stage, [piece], new Work
        {
            In = [piece.Id],
            Out = lanes,
            Kerf = kerf,
            Cuts = lanes.Length - 1,
            Setting = widths[0],
            Workaround = Way(stage.Operation, piece.Length, widths.Min(), piece.Thickness),
        });
        return lanes;
    }

    /// <summary>Crosscuts a piece. What is not in the outputs and kerfs is taken off the ends.</summary>
    internal ImmutableArray<Piece> Crosscut(Stage stage, Piece piece, ImmutableArray<(string Id, Length Length)> outputs, Length takenFirst, Length setting)
    {
        var kerf = shop.TableSaw.Kerf;
        ImmutableArray<Piece> cut = [.. outputs.Select(o => piece with { Id = o.Id, Length = o.Length })];
        Note(stage, [piece], new Work
        {
            In = [piece.Id],
            Out = cut,
            Kerf = kerf,
            Cuts = cut.Length - 1,
            Taken = piece.Length - Length.Sum(cut.Select(c => c.Length)) - (kerf * (cut.Length - 1)),
            TakenFirst = takenFirst,
            Setting = setting,
            Workaround = Way(stage.Operation, piece.Length, piece.Width, piece.Thickness),
        });
        return cut;
    }

    /// <summary>Glues strips edge to edge; what sticks out beyond the shortest is lost.</summary>
    internal Piece Glue(Stage stage, string id, ImmutableArray<Piece> strips)
    {
        var panel = new Piece(
            id, strips.Min(s => s.Length), Length.Sum(strips.Select(s => s.Width)), strips[0].Thickness, [.. strips.SelectMany(s => s.Lanes)]);
        Note(stage, strips, new Work { In = [.. strips.Select(s => s.Id)], Out = [panel] });
        return panel;
    }

    /// <summary>Glues two offcuts face to face. What both have in common goes into the board, each with its own thickness; what sticks out is lost.</summary>
    internal void GlueFaces(Stage stage, ImmutableArray<Piece> halves, Piece board)
    {
        Add(stage, new Work { In = [.. halves.Select(h => h.Id)], Out = [board] });
        foreach (var half in halves)
        {
            var inBoard = Volume.Of(board.Length, board.Width, half.Thickness);
            faced[half.Id] = inBoard;
            waste[(half.Id, stage.Operation)] = Volume.Of(half.Length, half.Width, half.Thickness) - inBoard;
        }
    }

    /// <summary>What of an offcut is in a board glued face to face.</summary>
    internal Volume Faced(string offcut) => faced.GetValueOrDefault(offcut);

    /// <summary>Saws a panel or a thick strip into layers of equal thickness; what does not divide stays in the last.</summary>
    internal ImmutableArray<Piece> Resaw(Stage stage, Piece panel, int layers)
    {
        var kerf = shop.Bandsaw.Kerf;
        var sum = panel.Thickness - (kerf * (layers - 1));
        var layer = sum.Divide(layers, Rounding.Down);
        ImmutableArray<Piece> cut =
        [
            .. Enumerable.Range(1, layers).Select(i => panel with
            {
                Id = $"{panel.Id}/{i}", Thickness = i < layers ? layer : sum - (layer * (layers - 1)),
            }),
        ];
        Note(stage, [panel], new Work
        {
            In = [panel.Id],
            Out = cut,
            Kerf = kerf,
            Cuts = layers - 1,
            Setting = layer,
            Workaround = Way(stage.Operation, panel.Length, panel.Width, layer),
        });
        return cut;
    }

    /// <summary>Notes a work that is already worked out.</summary>
    internal void Note(Stage stage, ImmutableArray<Piece> before, Work work)
    {
        Add(stage, work);
        foreach (var (offcut, volume) in before.SelectMany(PieceWood.ByOffcut))
        {
            Count(offcut, volume);
        }

        foreach (var (offcut, volume) in work.Out.SelectMany(PieceWood.ByOffcut))
        {
            Count(offcut, Volume.Zero - volume);
        }

        void Count(string offcut, Volume volume) =>
            waste[(offcut, stage.Operation)] = waste.GetValueOrDefault((offcut, stage.Operation)) + volume;
    }

    private void Add(Stage stage, Work work)
    {
        if (!works.TryGetValue(stage, out var list))
        {
            works[stage] = list = ImmutableArray.CreateBuilder<Work>();
        }

        list.Add(work);
    }

    private static IEnumerable<Lane> Shrink(IEnumerable<Lane> lanes, Length taken)
    {
        foreach (var lane in lanes)
        {
            var off = Length.Min(lane.Width, taken);
            taken -= off;
            if (off < lane.Width)
            {
                yield return lane with { Width = lane.Width - off };
            }
        }
    }

    private Workaround Way(Operation operation, Length length, Length width, Length thickness) =>
        StationRules.Rule(operation, length, width, thickness, shop) is StationRuling.Instead instead ? instead.Way : Workaround.None;
}
