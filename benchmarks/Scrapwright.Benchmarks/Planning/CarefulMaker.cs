using Scrapwright.Core.Designs;
using Scrapwright.Core.Wood;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Benchmarks.Planning;

/// <summary>
/// What a careful maker does by hand: takes the gifts by importance, lays the pile out by length, and fills each panel with the strip that stands out best
/// from the last one and still fits, whole offcuts only crosscut; solid parts come from the first board that is wide enough. Common practice, no source.
/// </summary>
internal sealed class CarefulMaker
{
    private readonly Problem problem;
    private readonly SegmentOptions options;

    private CarefulMaker(Problem problem, SegmentOptions options) => (this.problem, this.options) = (problem, options);

    internal static Placement Place(Problem problem, SegmentOptions options) => new CarefulMaker(problem, options).Place();

    private Placement Place()
    {
        var pile = new OpenPile(problem);
        var made = new bool[problem.Gifts.Length];
        List<int> panels = [];
        List<Segment> segments = [];
        foreach (var gift in problem.Gifts.OrderByDescending(g => g.Weight).ThenBy(g => g.Index))
        {
            var trial = pile.Copy();
            if (Place(gift, trial) is { } placed)
            {
                pile = trial;
                made[gift.Index] = true;
                panels.AddRange(placed.Panels);
                segments.AddRange(placed.Segments);
            }
        }

        var placement = new Placement([.. made], [.. panels.Order()], [.. segments], []);
        return placement with { Values = PlacementValues.Of(problem, placement) };
    }

    private (List<int> Panels, List<Segment> Segments)? Place(GiftDemand gift, OpenPile pile)
    {
        List<int> panels = [];
        List<Segment> segments = [];
        foreach (var run in problem.Runs.Where(r => r.GiftIndex == gift.Index))
        {
            for (var i = 0; i < run.Runs.Length; i++)
            {
                if (options.ForSolid(run.Index).Where(o => pile.HasRoom(o)).OrderBy(LengthOf).ThenBy(o => o.Segment.Pattern).FirstOrDefault() is not { } board)
                {
                    return null;
                }

                pile.Take(board);
                segments.Add(board.Segment with { Solid = run.Index });
            }
        }

        foreach (var part in gift.Product.Parts.Where(p => p.Kind == PartKind.Panel))
        {
            // One panel for all pieces, not resawn; if that finds no strips, two shorter ones, and so on.
            var modes = problem.Panels.Where(p => p.GiftIndex == gift.Index && p.Part.Key == part.Key && p is { Slot: 0, Needs.Layers: 1 }).OrderByDescending(p => p.Yield);
            if (modes.Select(mode => Panels(mode, part, pile)).FirstOrDefault(p => p is not null) is not { } found)
            {
                return null;
            }

            foreach (var (panel, strips) in found)
            {
                panels.Add(panel);
                foreach (var strip in strips)
                {
                    pile.Take(strip);
                    segments.Add(strip.Segment with { Panel = panel });
                }
            }
        }

        return (panels, segments);
    }

    private List<(int Panel, List<SegmentOption> Strips)>? Panels(PanelCandidate first, Part part, OpenPile pile)
    {
        var trial = pile.Copy();
        List<(int, List<SegmentOption>)> panels = [];
        for (int slot = 0, missing = part.Count; missing > 0; slot++, missing -= first.Yield)
        {
            if (Strips(problem.Panels[first.Index + slot], trial) is not { } strips)
            {
                return null;
            }

            panels.Add((first.Index + slot, strips));
        }

        return panels;
    }

    private List<SegmentOption>? Strips(PanelCandidate panel, OpenPile pile)
    {
        List<SegmentOption> strips = [];
        long filled = 0;
        while (strips.Count < panel.Wish.MinimumStrips || filled < Grid.Hundredths.Up(panel.Needs.WidthBase))
        {
            var next = options.ForPanel(panel.Index)
                .Where(o => problem.Patterns[o.Segment.Pattern] is { Route: Route.MillWhole, Lanes.Length: 1 } && pile.HasRoom(o)
                    && strips.Count(s => s.Place == o.Place) < o.Most
                    && (strips.Count == 0 || panel.Wish.MayTouch(SpeciesTable.Get(strips[^1].Species), SpeciesTable.Get(o.Species), problem.Shop))
                    && (panel.Wish.Pattern != StripPattern.Graduated || strips.All(s => s.Species != o.Species)))
                .OrderByDescending(o => strips.Count == 0 ? 0 : ColourDifference.Ciede2000(SpeciesTable.Get(strips[^1].Species).Colour, SpeciesTable.Get(o.Species).Colour))
                .ThenBy(LengthOf).FirstOrDefault();
            if (next is null || strips.Count == panel.Wish.MaximumStrips)
            {
                return null;
            }

            strips.Add(next);
            pile.Take(next);
            filled += next.Filling;
        }

        return strips;
    }

    // The shortest that fits comes first: a long one is kept for what needs it.
    private Core.Measures.Length LengthOf(SegmentOption option) => problem.Patterns[option.Segment.Pattern].Offcut.Length;
}
