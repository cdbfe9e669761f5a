using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Plans;

/// <summary>Puts a plan together step by step, as told; works out its numbers with the milling rules, not with the audit.</summary>
internal sealed partial class PlanBench(PlanRequest request, ImmutableArray<GiftDesign> designs)
{
    private readonly Dictionary<string, Offcut> offcuts = request.Pile.SelectMany(o => o.Pieces()).ToDictionary(o => o.Label);
    private readonly Dictionary<string, Piece> pieces = request.Pile.SelectMany(o => o.Pieces())
        .ToDictionary(o => o.Label, o => new Piece(o.Label, o.Length, o.Width, o.Thickness, [new Lane(o.Label, o.Width)]));
    private readonly List<string> produced = [.. request.Pile.SelectMany(o => o.Pieces()).Select(o => o.Label)];
    private readonly Dictionary<string, Piece> before = [];
    private readonly Dictionary<string, Length> beforeTrim = [];
    private readonly HashSet<string> defects = [];
    private readonly SortedDictionary<(string Offcut, Operation Operation), Volume> lost = [];
    private readonly List<Step> steps = [];
    private readonly List<GlueUp> glueUps = [];
    private readonly List<BoardRun> boards = [];
    private readonly List<RodUse> rods = [];
    private readonly List<MadeGift> made = [];

    private Shop Shop => request.Shop;

    public PlanBench FaceJoint(params string[] ids) => Shape(Operation.FaceJoint, Station.Jointer, ids, p => p with
    {
        Thickness = p.Thickness - Flattening.Loss(OffcutOf(p), p.Length, p.Width) - Shop.Allowances.FaceJoint.Mean,
    });

    public PlanBench FacePlane(params string[] ids) =>
        Shape(Operation.FacePlane, Station.Planer, ids, p => p with { Thickness = p.Thickness - Shop.Allowances.FacePlane.Mean });

    public PlanBench EdgeJoint(params (string Id, int Edges)[] edges) => Shape(Operation.EdgeJoint, Station.Jointer, [.. edges.Select(e => e.Id)], p =>
    {
        var width = p.Width - (Shop.Allowances.EdgeJoint.Mean * edges.First(e => e.Id == p.Id).Edges);
        return p with { Width = width, Lanes = [p.Lanes[0] with { Width = width }] };
    });

    public PlanBench PlaneToThickness(Length target, params string[] ids)
    {
        foreach (var id in ids)
        {
            before[id] = pieces[id];
        }

        return Shape(Operation.PlaneToThickness, Station.Planer, ids, p => p with { Thickness = target });
    }

    public PlanBench FlattenPanel(string id) =>
        Shape(Operation.FlattenPanel, Station.Planer, [id], p => p with { Thickness = p.Thickness - Shop.Allowances.PanelFlatten.Mean });

    public PlanBench PlanePanel(Part part, params string[] ids) =>
        Shape(Operation.PlanePanel, Station.Planer, ids, p => p with { Thickness = part.Thickness + (Shop.Allowances.Sand.Mean * 2) });

    public PlanBench TrimWidth(params (string Id, Length Width)[] trims)
    {
        foreach (var (id, _) in trims)
        {
            beforeTrim[id] = pieces[id].Width;
        }

        return Shape(Operation.TrimWidth, Station.TableSaw, [.. trims.Select(t => t.Id)], p =>
        {
            var width = trims.First(t => t.Id == p.Id).Width;
            var lower = (p.Width - width).Divide(2, Rounding.Down);
            var upper = p.Width - width - lower;
            ImmutableArray<Lane> lanes = p.Lanes.Length == 1
                ? [p.Lanes[0] with { Width = width }]
                : [p.Lanes[0] with { Width = p.Lanes[0].Width - lower }, .. p.Lanes[1..^1], p.Lanes[^1] with { Width = p.Lanes[^1].Width - upper }];
            return p with { Width = width, Lanes = lanes };
        });
    }

    public PlanBench Rip(Operation operation, string id, params (string Id, Length Width)[] lanes)
    {
        var whole = pieces[id];
        return Cut(operation, operation == Operation.Rip ? Station.TableSaw : Station.Bandsaw, id,
            lanes.Select(l => whole with { Id = l.Id, Width = l.Width, Lanes = [whole.Lanes[0] with { Width = l.Width }] }),
            operation == Operation.Rip ? Shop.TableSaw.Kerf : Shop.Bandsaw.Kerf, whole.Width, p => p.Width, default, lanes.Min(l => l.Width));
    }

    public PlanBench Crosscut(Operation operation, string id, params (string Id, Length Length)[] lengths)
    {
        var first = operation == Operation.CrosscutBlanks ? Shop.Allowances.EndTrim.Mean : Length.Zero;
        return Cut(operation, Station.TableSaw, id, lengths.Select(l => pieces[id] with { Id = l.Id, Length = l.Length }),
            Shop.TableSaw.Kerf, pieces[id].Length, p => p.Length, first, pieces[id].Width);
    }

    public PlanBench Resaw(string id, int layers)
    {
        var whole = pieces[id];
        var sizes = (whole.Thickness - (Shop.Bandsaw.Kerf * (layers - 1))).Split(layers);
        return Cut(Operation.Resaw, Station.Bandsaw, id, sizes.Select((t, i) => whole with { Id = $"{id}/{i + 1}", Thickness = t }),
            Shop.Bandsaw.Kerf, whole.Thickness, p => p.Thickness, default, whole.Width);
    }

    public PlanBench Defect(string id)
    {
        defects.Add(id);
        return this;
    }

    public PlanBench Glue(string id, string gift, Part part, int blanks, int layers, params string[] ids)
    {
        var needs = new PanelNeeds(part, blanks, layers, Shop);
        var thin = ids.Min(i => Before(i).Thickness);
        var spread = ids.Where(i => Before(i).Thickness == thin).Max(i => StripMilling.Thickness(OffcutOf(pieces[i]), pieces[i].Length, pieces[i].Width, LayersOf(i), Shop).Spread);
        var width = Length.Sum(ids.Select(i => pieces[i].Width));
        var colours = ids.Select(i => SpeciesTable.Get(OffcutOf(pieces[i]).Species).Colour).ToArray();
        var contrast = colours.Zip(colours.Skip(1), ColourDifference.Ciede2000).DefaultIfEmpty(0).Min();
        var overlap = ids.Min(i => pieces[i].Length);
        glueUps.Add(new GlueUp
        {
            Id = id,
            Gift = gift,
            Part = part.Key,
            Blanks = blanks,
            Layers = layers,
            Strips = [.. ids.Select(i => new Strip(i, OffcutOf(pieces[i]).Label, pieces[i].Width + (Shop.Allowances.EdgeJoint.Mean * 2), pieces[i].Width, pieces[i].Length, Before(i).Thickness) { Layers = LayersOf(i) })],
            Overlap = overlap,
            RoughWidth = width,
            TargetWidth = part.Width,
            ThicknessLadder = needs.ThicknessLadder(thin, spread),
            WidthLadder = needs.WidthLadder(width, Length.Zero),
            ChancePerMille = 0,
            LeastContrastHundredths = (int)Math.Floor(100 * contrast),
            ClampsNeeded = Math.Max(2, (int)Math.Ceiling(overlap.Inches / Shop.ClampSpacing.Inches) + 1),
        });
        var panel = new Piece(id, overlap, width, thin, [.. ids.SelectMany(i => pieces[i].Lanes)]);
        return Add(Operation.GlueUp, Station.Clamps, [new Work { In = [.. ids], Out = [panel] }], id, gift);
    }

    public PlanBench Board(string gift, string run, string id)
    {
        var piece = pieces[id];
        var width = beforeTrim[id];
        boards.Add(new BoardRun(gift, run, id, OffcutOf(piece).Label, width + (Shop.Allowances.EdgeJoint.Mean * 2), width, piece.Length, Before(id).Thickness));
        return this;
    }

    private Piece Before(string id) => before.GetValueOrDefault(id) ?? pieces[id];

    private Offcut OffcutOf(Piece piece) => offcuts[piece.Lanes[0].Offcut];

    private PlanBench Shape(Operation operation, Station station, string[] ids, Func<Piece, Piece> change) =>
        Add(operation, station, [.. ids.Select(id =>
        {
            Piece from = pieces[id], to = change(from);
            var isWidth = from.Thickness == to.Thickness && operation is Operation.EdgeJoint or Operation.TrimWidth;
            var taken = isWidth ? from.Width - to.Width : from.Thickness - to.Thickness;
            return new Work
            {
                In = [id],
                Out = [to],
                Taken = taken,
                TakenFirst = operation == Operation.TrimWidth ? taken.Divide(2, Rounding.Down) : Length.Zero,
                Setting = isWidth ? to.Width : to.Thickness,
                Workaround = Way(operation, from.Length, operation == Operation.TrimWidth ? to.Width : from.Width, to.Thickness),
            };
        })]);

    private PlanBench Cut(Operation operation, Station station, string id, IEnumerable<Piece> outputs, Length kerf, Length whole, Func<Piece, Length> size, Length first, Length wide)
    {
        Piece[] cut = [.. outputs];
        return Add(operation, station, [new Work
        {
            In = [id],
            Out = [.. cut],
            Kerf = kerf,
            Cuts = cut.Length - 1,
            Taken = whole - Length.Sum(cut.Select(size)) - (kerf * (cut.Length - 1)),
            TakenFirst = first,
            Setting = size(cut[0]),
            Workaround = Way(operation, pieces[id].Length, wide, pieces[id].Thickness),
        }]);
    }

    private Workaround Way(Operation operation, Length length, Length width, Length thickness) =>
        StationRules.Rule(operation, length, width, thickness, Shop) is StationRuling.Instead instead ? instead.Way : Workaround.None;

    private PlanBench Add(Operation operation, Station station, ImmutableArray<Work> works, string glueUp = "", string gift = "", int index = -1)
    {
        foreach (var work in works)
        {
            Apply(operation, work);
        }

        steps.Add(new Step
        {
            Number = steps.Count + 1,
            Station = station,
            Operation = operation,
            GlueUp = glueUp,
            Gift = gift,
            AssemblyIndex = index,
            Works = works,
            HandsOnMinutes = WorkContent.HandsOnMinutes(operation, works.Length, Shop),
            WaitMinutes = WorkContent.WaitMinutes(operation, Shop),
        });
        return this;
    }

    private void Apply(Operation operation, Work work)
    {
        foreach (var id in work.In.Where(pieces.ContainsKey))
        {
            Count(operation, pieces[id], 1);
            pieces.Remove(id);
        }

        foreach (var piece in work.Out)
        {
            Count(operation, piece, -1);
            pieces.Add(piece.Id, piece);
            if (!produced.Contains(piece.Id))
            {
                produced.Add(piece.Id);
            }
        }
    }

    private void Count(Operation operation, Piece piece, int sign)
    {
        foreach (var lane in piece.Lanes)
        {
            var key = (lane.Offcut, operation);
            lost[key] = lost.GetValueOrDefault(key) + (Volume.Of(piece.Length, lane.Width, piece.Thickness) * sign);
        }
    }
}
