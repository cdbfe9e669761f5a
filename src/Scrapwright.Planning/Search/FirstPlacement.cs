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

    internal static Placement Find(Problem problem, SegmentOptions options) => new FirstPlacement(problem, options).Find();

    private Placement Find()
    {
        var pile = new OpenPile(problem);
        var made = new bool[problem.Gifts.Length];
        var panels = new List<int>();
        var segments = new List<Segment>();
        foreach (var gift in problem.Gifts.OrderByDescending(g => g.Weight).ThenBy(g => g.Index))
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
        foreach (var demand in problem.Runs.Where(r => r.GiftIndex == gift.Index))
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

        return (panels, segments);
    }

    private static double Dislike(GiftDemand gift, RunDemand demand, SegmentOption option)
    {
        var wished = demand.Runs[0].Members.SelectMany(m => gift.Product.Parts.First(p => p.Key == m.Part).Species).ToList();
        return wished.Count == 0 || wished.Contains(option.Species) ? 1 : 2;
    }

    private bool PlacePart(GiftDemand gift, Part part, OpenPile pile, List<int> panels, List<Segment> segments)
    {
        var missing = part.Count;
        while (missing > 0)
        {
            (PanelCandidate Panel, List<SegmentOption> Strips, long WoodPerBlank)? best = null;
            foreach (var panel in problem.Panels.Where(p => p.GiftIndex == gift.Index && p.Part.Key == part.Key && !panels.Contains(p.Index)))
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

    private List<SegmentOption>? Strips(PanelCandidate panel, OpenPile pile)
    {
        var trial = pile.Copy();
        var strips = new List<SegmentOption>();
        var widest = Grid.Hundredths.Down(panel.WidestRough);
        long width = 0;
        while (strips.Count < panel.Wish.MinimumStrips || width < WidthNeeded(panel, strips))
        {
            var missing = Missing(panel, strips, width);
            var next = options.ForPanel(panel.Index)
                .Where(o => trial.HasRoom(o) && width + o.Width + strips.Count + 1 <= widest && Goes(panel, strips, o)
                    && strips.Count(s => s.Place == o.Place) < o.Most)
                .MinBy(o => Dislike(panel, o) * o.Wood / Math.Min(o.Width, missing));
            if (next is null || strips.Count == panel.Wish.MaximumStrips)
            {
                return null;
            }

            strips.Add(next);
            width += next.Width;
            trial.Take(next);
        }

        return strips;
    }

    /// <summary>Wood that was not wished for counts as twice as dear.</summary>
    private static double Dislike(PanelCandidate panel, SegmentOption option) =>
        panel.Wish.Species.IsEmpty || panel.Wish.Species.Contains(option.Species) ? 1 : 2;

    /// <summary>Width still missing, on the grid, at least a millimetre: width beyond it is worth nothing.</summary>
    private static long Missing(PanelCandidate panel, List<SegmentOption> strips, long width) => Math.Max(100, WidthNeeded(panel, strips) - width);

    private static long WidthNeeded(PanelCandidate panel, List<SegmentOption> strips) =>
        Grid.Hundredths.Up(panel.WidthBase) + WidthInHand.Of(strips);

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
