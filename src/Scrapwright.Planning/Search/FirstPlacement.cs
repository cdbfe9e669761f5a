using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Wood;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>
/// A first placement without the solver, in milliseconds: gift by gift in the order of their worth, each glue-up strip by strip,
/// always the cheapest wood per width that goes beside the strip before it. The full search starts from it and is compared with it in benchmarks.
/// </summary>
internal sealed class FirstPlacement
{
    private readonly Problem problem;
    private readonly SegmentOptions options;
    private readonly Dictionary<(bool AroundAccent, double Contrast, string One, string Other), bool> goTogether = [];

    private FirstPlacement(Problem problem, SegmentOptions options)
    {
        this.problem = problem;
        this.options = options;
    }

    internal static Placement Find(Problem problem, SegmentOptions options) => Complete(problem, options, Placement.Done(problem));

    /// <summary>A placement with the gifts it does not make yet added, as far as they find wood.</summary>
    internal static Placement Complete(Problem problem, SegmentOptions options, Placement placement) => new FirstPlacement(problem, options).Complete(placement);

    private Placement Complete(Placement start)
    {
        var pile = new OpenPile(problem);
        foreach (var segment in start.Segments)
        {
            pile.Take(segment);
        }

        bool[] made = [.. start.Made];
        List<int> panels = [.. start.Panels];
        List<Segment> segments = [.. start.Segments];
        foreach (var gift in problem.Gifts.Where(g => !made[g.Index]).OrderByDescending(g => g.Weight).ThenBy(g => g.Index))
        {
            var trial = pile.Copy();
            if (Place(gift, trial) is not { } placed)
            {
                continue;
            }

            pile = trial;
            made[gift.Index] = true;
            panels.AddRange(placed.Panels);
            segments.AddRange(placed.Segments);
        }

        var placement = new Placement([.. made], [.. panels.Order()], [.. segments], []);
        return placement with { Values = PlacementValues.Of(problem, placement) };
    }

    private (List<int> Panels, List<Segment> Segments)? Place(GiftDemand gift, OpenPile pile)
    {
        var panels = new List<int>();
        var segments = new List<Segment>();
        foreach (var demand in problem.Runs.Where(r => r.GiftIndex == gift.Index && r.Done is null))
        {
            for (var i = 0; i < demand.Runs.Length; i++)
            {
                var cheapest = options.ForSolid(demand.Index).Where(pile.HasRoom).MinBy(o => Dislike(gift, demand, o) * o.Wood);
                if (cheapest is null)
                {
                    return null;
                }

                pile.Take(cheapest);
                segments.Add(cheapest.Segment with { Solid = demand.Index });
            }
        }

        foreach (var part in gift.Product.Parts.Where(p => p.Kind == PartKind.Panel))
        {
            if (!PlacePart(gift, part, pile, panels, segments))
            {
                return null;
            }
        }

        return problem.KeepsPins(gift.Index, segments) ? (panels, segments) : null;
    }

    private static double Dislike(GiftDemand gift, RunDemand demand, SegmentOption option)
    {
        var wished = demand.Runs[0].Members.SelectMany(m => gift.Product.Parts.First(p => p.Key == m.Part).Species).ToList();
        return wished.Count == 0 || wished.Contains(option.Species) ? 1 : 2;
    }

    private bool PlacePart(GiftDemand gift, Part part, OpenPile pile, List<int> panels, List<Segment> segments)
    {
        var missing = problem.StillNeeded(gift, part);
        while (missing > 0)
        {
            (PanelCandidate Panel, List<SegmentOption> Strips, long WoodPerBlank)? best = null;
            foreach (var panel in problem.Panels.Where(p => p.GiftIndex == gift.Index && p.Part.Key == part.Key && p.Done is null && !p.IsShared && !panels.Contains(p.Index)))
            {
                if (panel.Slot > 0 && !panels.Contains(panel.Index - 1))
                {
                    continue;
                }

                if (Strips(panel, pile) is { } strips)
                {
                    var wood = strips.Sum(s => s.Wood) / Math.Min(panel.Yield, missing);
                    if (best is null || wood < best.Value.WoodPerBlank)
                    {
                        best = (panel, strips, wood);
                    }
                }
            }

            if (best is not { } found)
            {
                return false;
            }

            foreach (var strip in found.Strips)
            {
                pile.Take(strip);
                segments.Add(strip.Segment with { Panel = found.Panel.Index });
            }

            panels.Add(found.Panel.Index);
            missing -= found.Panel.Yield;
        }

        return true;
    }

    private List<SegmentOption>? Strips(PanelCandidate panel, OpenPile pile) =>
        (panel.IsBookMatchWished ? Pairs(panel, pile) : null) ?? StripByStrip(panel, pile);

    /// <summary>Pair by pair of sisters from the middle outwards.</summary>
    private List<SegmentOption>? Pairs(PanelCandidate panel, OpenPile pile)
    {
        var trial = pile.Copy();
        var strips = new List<SegmentOption>();
        var places = options.ForPanel(panel.Index).ToDictionary(o => o.Segment);
        var pairs = places.Values.Select(o => (One: o, Other: SisterSegments.Find(problem, o.Segment) is { } s && s.Lane > o.Segment.Lane ? places.GetValueOrDefault(s) : null))
            .Where(p => p.Other is not null).Select(p => (p.One, Other: p.Other!)).ToList();
        var widest = Grid.Hundredths.Down(panel.WidestRough);
        var needed = Grid.Hundredths.Up(panel.Needs.WidthBase);
        long width = 0;
        long filled = 0;
        while (strips.Count < panel.Wish.MinimumStrips || filled < needed)
        {
            var missing = Math.Max(100, needed - filled);
            var (one, other) = pairs
                .Where(p => trial.HasRoom(p.One) && trial.HasRoom(p.Other) && width + (p.One.Width * 2) + strips.Count + 2 <= widest && Goes(panel, strips, p.One)
                    && strips.Count(s => s.Place == p.One.Place) < Math.Min(p.One.Most, p.Other.Most))
                .OrderBy(p => Dislike(panel, p.One) * p.One.Wood / Math.Min(Math.Max(p.One.Filling + p.Other.Filling, 1), missing)).FirstOrDefault();
            if (one is null || strips.Count + 2 > Math.Min(panel.Wish.MaximumStrips, PlanModel.MostStrips))
            {
                return null;
            }

            foreach (var strip in new[] { one, other })
            {
                strips.Add(strip);
                width += strip.Width;
                filled += strip.Filling;
                trial.Take(strip);
            }
        }

        return strips;
    }

    private List<SegmentOption>? StripByStrip(PanelCandidate panel, OpenPile pile)
    {
        var trial = pile.Copy();
        var strips = new List<SegmentOption>();
        var widest = Grid.Hundredths.Down(panel.WidestRough);
        var needed = Grid.Hundredths.Up(panel.Needs.WidthBase);
        long width = 0;
        long filled = 0;
        while (strips.Count < panel.Wish.MinimumStrips || filled < needed)
        {
            // At least a millimetre: width beyond what is missing is worth nothing.
            var missing = Math.Max(100, needed - filled);
            var next = options.ForPanel(panel.Index)
                .Where(o => trial.HasRoom(o) && width + o.Width + strips.Count + 1 <= widest && Goes(panel, strips, o)
                    && strips.Count(s => s.Place == o.Place) < o.Most)
                .MinBy(o => Dislike(panel, o) * o.Wood / Math.Min(Math.Max(o.Filling, 1), missing));
            if (next is null || strips.Count == panel.Wish.MaximumStrips)
            {
                return null;
            }

            strips.Add(next);
            width += next.Width;
            filled += next.Filling;
            trial.Take(next);
        }

        return strips;
    }

    /// <summary>Wood that was not wished for counts as twice as dear; wood that is pinned costs next to nothing.</summary>
    private double Dislike(PanelCandidate panel, SegmentOption option) =>
        problem.IsPinned(panel, option.Segment.Pattern) ? 1e-6 : panel.Wish.Species.IsEmpty || panel.Wish.Species.Contains(option.Species) ? 1 : 2;

    private bool Goes(PanelCandidate panel, List<SegmentOption> strips, SegmentOption next)
    {
        if (!panel.IsStriped || strips.Count == 0)
        {
            return true;
        }

        return panel.Wish.Pattern switch
        {
            StripPattern.Graduated => strips.All(s => s.Species != next.Species),
            StripPattern.Accent => strips.All(s => MayTouch(panel.Wish, s.Species, next.Species)),
            _ => MayTouch(panel.Wish, strips[^1].Species, next.Species),
        };
    }

    private bool MayTouch(PanelWish wish, string one, string other)
    {
        var key = (wish.Pattern == StripPattern.Accent, wish.ContrastIn(problem.Shop), one, other);
        if (!goTogether.TryGetValue(key, out var answer))
        {
            goTogether[key] = answer = wish.MayTouch(SpeciesTable.Get(one), SpeciesTable.Get(other), problem.Shop);
        }

        return answer;
    }
}
