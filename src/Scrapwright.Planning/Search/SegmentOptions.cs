using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>
/// Every segment that could serve a glue-up or a run of solid parts. Glue-ups that need the same share one list, whichever gift they are for,
/// so its segments name no glue-up yet: 150 gifts of a few sizes cost no more than a few gifts.
/// </summary>
internal sealed class SegmentOptions
{
    /// <summary>So many strips of one stretch lie in one glue-up at most.</summary>
    private const long MostOfOneStretch = 2;

    private readonly Problem problem;
    private readonly int[] listOfPanel;
    private readonly int[] listOfRuns;
    private readonly List<ImmutableArray<SegmentOption>> lists = [];

    internal SegmentOptions(Problem problem)
    {
        this.problem = problem;
        var known = new Dictionary<object, int>();
        listOfPanel = [.. problem.Panels.Select(p => ListFor(Key(p), () => ForPanel(p)))];
        listOfRuns = [.. problem.Runs.Select(r => ListFor(Key(r), () => ForRuns(r)))];

        int ListFor(object key, Func<IEnumerable<SegmentOption>> make)
        {
            if (!known.TryGetValue(key, out var list))
            {
                known[key] = list = lists.Count;
                lists.Add([.. make()]);
            }

            return list;
        }
    }

    /// <summary>What could serve a glue-up; the segments name none.</summary>
    internal ImmutableArray<SegmentOption> ForPanel(int panel) => lists[listOfPanel[panel]];

    /// <summary>What could serve a run of solid parts; the segments name none.</summary>
    internal ImmutableArray<SegmentOption> ForSolid(int runs) => lists[listOfRuns[runs]];

    /// <summary>Which list a glue-up reads: glue-ups with the same number are alike but for their gift's wishes.</summary>
    internal int ListOfPanel(int panel) => listOfPanel[panel];

    /// <summary>Which list a run of solid parts reads.</summary>
    internal int ListOfRuns(int runs) => listOfRuns[runs];

    /// <summary>Segments over all glue-ups and runs: the size of the whole search.</summary>
    internal long Total => listOfPanel.Concat(listOfRuns).Sum(l => (long)lists[l].Length);

    // The shop is the same for all, so parts' sizes and the mode decide all that a glue-up needs.
    private static object Key(PanelCandidate p) => (p.Part.Length, p.Part.Width, p.Part.Thickness, p.Needs.Blanks, p.Needs.Layers, p.WidestRough, p.Needs.Margins, p.Done is not null);

    private static object Key(RunDemand r) => (r.Needs.Length, r.Needs.RoughWidth, r.Needs.Margins, r.Needs.StripThickness(Length.Zero), r.Runs.Length, r.Done is not null);

    private IEnumerable<SegmentOption> ForPanel(PanelCandidate panel)
    {
        if (panel.Done is not null)
        {
            yield break;
        }

        var needed = panel.Needs.Overlap;
        foreach (var (index, pattern, lane, run) in Stretches())
        {
            var width = pattern.Lanes[lane].NetWidth;
            if (width >= problem.Shop.NarrowestStrip && !pattern.Lanes[lane].IsForSolidParts && width <= panel.WidestRough
                && needed <= pattern.Runs[run].Length && IsUsable(pattern, lane, needed, panel.Needs.StripThickness))
            {
                yield return Option(pattern, new Segment(index, lane, run, -1, -1), needed, MostOfOneStretch) with
                {
                    Filling = Grid.Hundredths.Down(width - (panel.Needs.WidthPerEdge * EdgesThatSpread(pattern, lane, needed, panel.Wish))),
                };
            }
        }
    }

    /// <summary>A lane much wider than the parts is not used: there is a pattern that rips it first.</summary>
    private IEnumerable<SegmentOption> ForRuns(RunDemand demand)
    {
        if (demand.Done is not null)
        {
            yield break;
        }

        var needed = demand.Needs.Length;
        foreach (var (index, pattern, lane, run) in Stretches())
        {
            var over = pattern.Lanes[lane].RoughWidth - demand.Needs.RoughWidth;
            if (needed <= pattern.Runs[run].Length && over >= Length.Zero && pattern.Lanes[lane].NetWidth >= demand.Needs.NetWidth(pattern.EdgesJointed(lane)) && over < problem.Shop.TableSaw.Kerf + problem.Shop.NarrowestStrip
                && IsUsable(pattern, lane, needed, demand.Needs.StripThickness))
            {
                yield return Option(pattern, new Segment(index, lane, run, -1, -1), needed, demand.Runs.Length);
            }
        }
    }

    private IEnumerable<(int Index, OffcutPattern Pattern, int Lane, int Run)> Stretches()
    {
        for (var p = 0; p < problem.Patterns.Length; p++)
        {
            for (var lane = 0; lane < problem.Patterns[p].Lanes.Length; lane++)
            {
                foreach (var (run, _) in problem.Patterns[p].RunsOf(lane).Where(r => !r.Run.IsClosed))
                {
                    yield return (p, problem.Patterns[p], lane, run);
                }
            }
        }
    }

    private bool IsUsable(OffcutPattern pattern, int lane, Length needed, Func<Length, Length> thicknessNeeded)
    {
        var ladder = pattern.Thickness(lane, needed, problem.Shop);
        return ladder.End >= thicknessNeeded(ladder.Spread)
            && (pattern.Route != Route.CrosscutFirst
                || StripRules.Allow(pattern.Offcut, needed, pattern.Offcut.Width, ladder.End, problem.Shop));
    }

    /// <summary>
    /// Edges of a strip, as often as strips of one glue-up can share them: strips that lie in one lane, or in layers of one, are all narrower when it is.
    /// </summary>
    private long EdgesThatSpread(OffcutPattern pattern, int lane, Length needed, PanelWish wish)
    {
        if (pattern.Route == Route.CrosscutFirst)
        {
            return pattern.EdgesJointed(lane);
        }

        var kerf = problem.Shop.TableSaw.Kerf;
        var sharing = Enumerable.Range(lane / pattern.Layers * pattern.Layers, pattern.Layers)
            .Sum(layer => pattern.RunsOf(layer).Where(r => !r.Run.IsClosed).Sum(r => Math.Min(MostOfOneStretch, (r.Run.Length + kerf).CountOf(needed + kerf))));
        return pattern.EdgesJointed(lane) * Math.Min(sharing, wish.MaximumStrips);
    }

    private SegmentOption Option(OffcutPattern pattern, Segment segment, Length needed, long most)
    {
        var kerf = problem.Shop.TableSaw.Kerf;
        var fit = (pattern.Runs[segment.Run].Length + kerf).CountOf(needed + kerf);
        var lane = pattern.Lanes[segment.Lane];
        return new SegmentOption(
            segment, pattern.Offcut.Species, needed, lane.NetWidth, Math.Min(most, fit),
            WoodVolume.CeilingMm3(needed, lane.RoughWidth, pattern.RoughThickness, pattern.Layers))
        {
            Place = problem.PlaceOf(segment),
            Marks = problem.MarksOf(needed),
            Width = Grid.Hundredths.Down(lane.NetWidth),
        };
    }
}
