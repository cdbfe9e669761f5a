using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Problems;

/// <summary>Puts the work that is done into a problem: as glue-ups and runs that are settled, on offcuts whose one pattern is how they were cut.</summary>
internal static class DoneParts
{
    internal static void Add(
        ImmutableArray<PanelCandidate>.Builder panels, ImmutableArray<RunDemand>.Builder runs, IReadOnlyList<GiftDemand> gifts, GiftMargins[] margins, DoneWork done, Shop shop)
    {
        foreach (var gift in gifts)
        {
            foreach (var glueUp in done.Glued.Where(g => g.Gift == gift.Gift.Label))
            {
                var part = gift.Product.Parts.First(p => p.Key == glueUp.Part);
                ImmutableArray<PanelShare> shares = [new(gift.Index, part, glueUp.PiecesFor(gift.Gift.Label, part.Key)), .. SharesOf(glueUp, part, gifts)];
                var needs = new PanelNeeds(part, glueUp.Blanks, glueUp.Layers, shop) { Margins = SharedPanels.InHand(shares, margins, glueUp.Layers) };
                panels.Add(new PanelCandidate(panels.Count, gift.Index, part, needs, 0, ProblemMaker.WidestRough(needs, shop))
                {
                    Done = glueUp,
                    Shares = shares,
                });
            }

            foreach (var board in done.Cut.Where(b => b.Gift == gift.Gift.Label))
            {
                var run = gift.Product.Runs.First(r => r.Mark == board.Run);
                runs.Add(new RunDemand(runs.Count, gift.Index, [run], new SolidNeeds(run, gift.Product.Parts, shop) { Margins = margins[gift.Index].OfBoard(run.Mark) }) { Done = board });
            }
        }
    }

    /// <summary>The other gifts it was glued for, as far as they are still wished for and of that size; the rest of its pieces is over.</summary>
    private static IEnumerable<PanelShare> SharesOf(DoneGlueUp glueUp, Part part, IEnumerable<GiftDemand> gifts) =>
        from also in glueUp.Also
        from gift in gifts
        where gift.Gift.Label == also.Gift
        let other = gift.Product.Parts.FirstOrDefault(p => p.Key == also.Part && p.Kind == PartKind.Panel)
        where other is not null && other.HasSizeOf(part)
        select new PanelShare(gift.Index, other, also.Pieces);

    /// <summary>The pattern of an offcut that is cut already; null when it is not. What is left of one that is kept for later is closed.</summary>
    internal static OffcutPattern? FindPattern(DoneWork done, Offcut offcut, int index, bool isSaved, Shop shop)
    {
        if (done.Milled.FirstOrDefault(m => m.Offcut == offcut.Label) is not { } milled)
        {
            return null;
        }

        var route = milled.Way switch { MilledWay.RippedFirst => Route.RipFirst, MilledWay.CrosscutFirst => Route.CrosscutFirst, _ => Route.MillWhole };
        ImmutableArray<PatternLane> lanes = [.. milled.Lanes.Select(l => new PatternLane(l.RoughWidth, StripMilling.Width(l.RoughWidth, shop).End))];
        var clear = ClearRuns.Of(offcut, lanes, milled.Layers, route, shop);
        return new OffcutPattern(offcut, index, route, lanes, [.. milled.Lanes.SelectMany(RunsOf).Select(r => r with { IsClosed = r.IsClosed || isSaved })]) { Layers = milled.Layers };

        IEnumerable<ClearRun> RunsOf(MilledLane lane, int place) => lane.Pieces.IsEmpty
            ? clear.Where(r => r.Lane < 0 || r.Lane == place).Select(r => r with { Lane = place })
            : Pieces(lane, place, [.. ClearRuns.DefectsIn(offcut, lanes, milled.Layers, place, route, shop)], done, shop);
    }

    /// <summary>The segments of what is done, glue-up by glue-up.</summary>
    internal static ImmutableArray<Segment> Segments(Problem problem)
    {
        var places = problem.Patterns.Index()
            .SelectMany(p => p.Item.Runs.Index().Where(r => r.Item.Piece is not null).Select(r => (Key: (p.Item.Offcut.Label, r.Item.Piece), Pattern: p.Index, Run: r.Index, r.Item.Lane)))
            .DistinctBy(x => x.Key).ToDictionary(x => x.Key, x => new Segment(x.Pattern, x.Lane, x.Run, -1, -1));
        return
        [
            .. problem.Panels.Where(p => p.Done is not null).SelectMany(p => p.Done!.Strips.Select(s => places[(s.Offcut, s.Piece)] with { Panel = p.Index })),
            .. problem.Runs.Where(r => r.Done is not null).Select(r => places[(r.Done!.Offcut, r.Done.Piece)] with { Solid = r.Index }),
        ];
    }

    /// <summary>The pins that mean something and are not kept by what is done already.</summary>
    internal static ImmutableArray<PinDemand> OpenPins(Problem problem) =>
    [
        .. from pin in problem.Request.Choices.Pins.Select(p => (p.Offcut, p.Gift, p.Part, Piece: ""))
               .Concat(problem.Done.MilledStrips.Select(m => (m.Strip.Offcut, m.Gift, m.Part, m.Strip.Piece)))
           from gift in problem.Gifts
           where gift.Gift.Label == pin.Gift && gift.Product.Parts.Any(p => p.Key == pin.Part && p.Kind == PartKind.Panel)
           let demand = new PinDemand(gift.Index, pin.Part, problem.Offcuts.Index().Where(o => o.Item.Label == pin.Offcut).Select(o => o.Index).DefaultIfEmpty(-1).First()) { Piece = pin.Piece }
           where !(problem with { Pins = [demand] }).KeepsPins(gift.Index, problem.DoneSegments)
           select demand,
    ];

    private static IEnumerable<ClearRun> Pieces(MilledLane lane, int index, ImmutableArray<Defect> defects, DoneWork done, Shop shop)
    {
        var at = Length.Zero;
        foreach (var piece in lane.Pieces)
        {
            var to = at + piece.Length;
            var isDefect = defects.Any(d => Length.Max(d.From, at) < Length.Min(d.To, to));
            yield return new ClearRun(at, to)
            {
                Lane = index,
                Piece = piece.Piece,
                IsDefect = isDefect,
                IsClosed = isDefect || done.IsUsedUp(piece.Piece),
            };
            at = to + shop.TableSaw.Kerf;
        }
    }
}
