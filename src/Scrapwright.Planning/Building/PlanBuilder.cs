using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Chances;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Building;

/// <summary>Works a placement out into a plan: every piece, step, leftover and number.</summary>
internal sealed partial class PlanBuilder
{
    private readonly Problem problem;
    private readonly Placement placement;
    private readonly Shop shop;
    private readonly Bench bench;
    private readonly LeftoverList leftovers;
    private readonly ImmutableArray<GlueUp>.Builder glueUps = ImmutableArray.CreateBuilder<GlueUp>();
    private readonly ImmutableArray<BoardRun>.Builder boards = ImmutableArray.CreateBuilder<BoardRun>();
    private readonly List<FacedBoard> boardsGlued = [];
    private readonly Dictionary<(int Gift, string Part), List<Piece>> parts = [];
    private readonly List<Step> steps = [];
    private ImmutableArray<RodUse> rods = [];

    private PlanBuilder(Problem problem, Placement placement)
    {
        this.problem = problem;
        this.placement = placement;
        shop = problem.Shop;
        bench = new Bench(shop);
        leftovers = new LeftoverList(shop);
    }

    /// <summary>The glue-up whose strips find no order, or null.</summary>
    internal static int? FindUnorderable(Problem problem, Placement placement)
    {
        foreach (var index in placement.Panels.Where(p => problem.Panels[p].Done is null))
        {
            var panel = problem.Panels[index];
            if (new PanelStrips(problem, panel, [.. placement.Segments.Where(s => s.Panel == index)]).FindBest() is null)
            {
                return index;
            }
        }

        return null;
    }

    /// <summary>The plan of a placement.</summary>
    internal static Plan Build(Problem problem, Placement placement, IReadOnlyDictionary<LevelKind, long> bounds) =>
        new PlanBuilder(problem, placement).Build(bounds);

    private Plan Build(IReadOnlyDictionary<LevelKind, long> bounds)
    {
        var strips = MillOffcuts();
        MakePanels(strips);
        MakeBoards(strips);
        MakeRods();
        AddMillingSteps();
        var gifts = problem.Gifts.Where(g => placement.Made[g.Index]).ToList();
        foreach (var gift in GiftsInWorkingOrder())
        {
            AddAssembly(gift);
        }

        var place = problem.Offcuts.Select((o, i) => (o.Label, i)).ToDictionary(x => x.Label, x => x.i);
        var left = leftovers.InOrder(place, steps);
        ImmutableArray<MadeGift> made = [.. gifts.Select(Made)];
        return PlanChances.Stated(new Plan
        {
            Request = problem.Request,
            Fingerprint = PlanJson.Fingerprint(problem.Request),
            Made = made,
            Unmade = UnmadeGifts.Of(problem, made, left),
            GlueUps = glueUps.ToImmutable(),
            Faced = [.. boardsGlued],
            Boards = boards.ToImmutable(),
            Steps = [.. steps],
            Leftovers = left,
            Ledger = Ledger(left),
            Rods = rods,
            Shopping = ShoppingList.For(problem.Request, made, rods),
            Before = problem.Before,
            Levels = [.. placement.Values.Select(v => new Level { Kind = v.Kind, Value = v.Value, Bound = bounds.GetValueOrDefault(v.Kind, v.Value) })],
        });
    }

    private List<PlacedStrip> MillOffcuts()
    {
        var milling = new OffcutMilling(problem, bench);
        var byOffcut = placement.Segments.GroupBy(s => problem.Patterns[s.Pattern].OffcutIndex).ToDictionary(g => g.Key, g => g.ToImmutableArray());
        var strips = new List<PlacedStrip>();
        var faced = GlueFaces(byOffcut.OrderBy(o => o.Key).Select(o => problem.Patterns[o.Value[0].Pattern].Facing).OfType<Facing>());
        for (var i = 0; i < problem.Offcuts.Length; i++)
        {
            if (byOffcut.TryGetValue(i, out var segments))
            {
                strips.AddRange(milling.Mill(problem.Patterns[segments[0].Pattern], segments, leftovers));
            }
            else if (IsWood(i) && !faced.Contains(i))
            {
                leftovers.Add(OffcutMilling.WholePiece(problem.Offcuts[i]));
            }
        }

        return strips;
    }

    /// <summary>True when it is there in the end or on the way: an offcut of the pile, or a board that is glued.</summary>
    private bool IsWood(int offcut) => offcut < problem.FirstBoard || boardsGlued.Any(b => b.Label == problem.Offcuts[offcut].Label);

    /// <summary>Glues the boards that something is cut from, and gives the places of their offcuts.</summary>
    private HashSet<int> GlueFaces(IEnumerable<Facing> facings)
    {
        var faced = new HashSet<int>();
        foreach (var facing in facings)
        {
            var gluing = facing.Gluing;
            ImmutableArray<Piece> halves = [Flat(gluing, gluing.Upper), Flat(gluing, gluing.Lower)];
            var board = OffcutMilling.WholePiece(gluing.Board);
            bench.GlueFaces(new Stage(Operation.FaceGlue, boardsGlued.Count), halves, board);
            boardsGlued.Add(new FacedBoard(
                gluing.Label, gluing.Upper.Label, gluing.Lower.Label, halves[0].Thickness, halves[1].Thickness, board.Length, board.Width, board.Thickness, gluing.ClampsNeeded));
            faced.Add(facing.Upper);
            faced.Add(facing.Lower);
        }

        return faced;
    }

    private Piece Flat(FaceGluing gluing, Core.Pile.Offcut offcut) =>
        bench.TakeThickness(new Stage(Operation.FaceJoint, 1), OffcutMilling.WholePiece(offcut), offcut.Thickness - gluing.Inner(offcut).End);

    private void MakeRods()
    {
        var pieces = new List<RodPiece>();
        foreach (var gift in GiftsInWorkingOrder())
        {
            foreach (var part in gift.Product.Parts.Where(p => p.Kind == PartKind.Rod))
            {
                var copies = new List<Piece>();
                for (var copy = 1; copy <= part.Count; copy++)
                {
                    var id = PartId(gift, part, copy);
                    pieces.Add(new RodPiece(id, part.Thickness, part.Length, part.Species));
                    copies.Add(new Piece(id, part.Length, part.Width, part.Thickness, []));
                }

                parts[(gift.Index, part.Key)] = copies;
            }
        }

        rods = RodCutting.Cut([.. pieces], shop);
    }

    /// <summary>By priority, then by date, then as listed.</summary>
    private IEnumerable<GiftDemand> GiftsInWorkingOrder() => problem.Gifts.Where(g => placement.Made[g.Index])
        .OrderBy(g => g.Gift.Priority).ThenBy(g => g.Gift.Due ?? DateOnly.MaxValue).ThenBy(g => g.Index);

    private static string PartId(GiftDemand gift, Part part, int copy) => $"{gift.Gift.Label}-{part.Key}{copy}";

    private static MadePart MadePartOf(Part part, Piece piece, int index) => new(part.Key, index + 1, piece.Id);

    private MadeGift Made(GiftDemand gift) => new(
        gift.Gift.Label,
        [.. gift.Product.Parts.SelectMany(part => parts[(gift.Index, part.Key)].Select((piece, i) => MadePartOf(part, piece, i)))]);

    private ImmutableArray<LedgerRow> Ledger(ImmutableArray<Leftover> left)
    {
        var inParts = SumByOffcut(parts.Values.SelectMany(p => p));
        var kept = SumByOffcut(left.Where(l => l.Place == LeftoverPlace.Pile).Select(l => l.Piece));
        var scrap = SumByOffcut(left.Where(l => l.Place == LeftoverPlace.ScrapBin).Select(l => l.Piece));
        return
        [
            .. problem.Offcuts.Where((_, i) => IsWood(i)).Select(o => new LedgerRow
            {
                Offcut = o.Label,
                In = Volume.Of(o.Length, o.Width, o.Thickness),
                Faced = bench.Faced(o.Label),
                Parts = inParts.GetValueOrDefault(o.Label),
                Kept = kept.GetValueOrDefault(o.Label),
                Scrap = scrap.GetValueOrDefault(o.Label),
                Waste = bench.Waste(o.Label),
            }),
        ];
    }

    private static Dictionary<string, Volume> SumByOffcut(IEnumerable<Piece> pieces) =>
        pieces.SelectMany(PieceWood.ByOffcut).GroupBy(x => x.Offcut).ToDictionary(g => g.Key, g => Volume.Sum(g.Select(x => x.Volume)));
}
