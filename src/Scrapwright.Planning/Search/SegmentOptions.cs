using Scrapwright.Core.Measures;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>Every segment that could serve a glue-up or a run of solid parts.</summary>
internal sealed class SegmentOptions
{
    private readonly Problem problem;

    internal SegmentOptions(Problem problem)
    {
        this.problem = problem;
        ByPanel = [.. problem.Panels.Select(_ => new List<SegmentOption>())];
        ByRuns = [.. problem.Runs.Select(_ => new List<SegmentOption>())];
        for (var p = 0; p < problem.Patterns.Length; p++)
        {
            var pattern = problem.Patterns[p];
            for (var lane = 0; lane < pattern.Lanes.Length; lane++)
            {
                for (var run = 0; run < pattern.Runs.Length; run++)
                {
                    AddForPanels(p, pattern, lane, run);
                    AddForRuns(p, pattern, lane, run);
                }
            }
        }
    }

    internal List<SegmentOption>[] ByPanel { get; }

    internal List<SegmentOption>[] ByRuns { get; }

    private void AddForPanels(int index, OffcutPattern pattern, int lane, int run)
    {
        var width = pattern.Lanes[lane].NetWidth;
        if (width < problem.Shop.NarrowestStrip || pattern.Lanes[lane].IsForSolidParts)
        {
            return;
        }

        foreach (var panel in problem.Panels)
        {
            var needed = panel.Needs.Overlap;
            if (needed <= pattern.Runs[run].Length && width <= panel.WidestRough
                && IsUsable(pattern, lane, needed, panel.Needs.StripThickness))
            {
                ByPanel[panel.Index].Add(Option(pattern, new Segment(index, lane, run, panel.Index, -1), needed, 2));
            }
        }
    }

    /// <summary>A lane much wider than the parts is not used: there is a pattern that rips it first.</summary>
    private void AddForRuns(int index, OffcutPattern pattern, int lane, int run)
    {
        foreach (var demand in problem.Runs)
        {
            var needed = demand.Needs.Length;
            var over = pattern.Lanes[lane].RoughWidth - demand.Needs.RoughWidth;
            if (needed <= pattern.Runs[run].Length && over >= Length.Zero && over < problem.Shop.TableSaw.Kerf + problem.Shop.NarrowestStrip
                && IsUsable(pattern, lane, needed, demand.Needs.StripThickness))
            {
                ByRuns[demand.Index].Add(Option(pattern, new Segment(index, lane, run, -1, demand.Index), needed, demand.Runs.Length));
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

    private SegmentOption Option(OffcutPattern pattern, Segment segment, Length needed, long most)
    {
        var kerf = problem.Shop.TableSaw.Kerf;
        var fit = (pattern.Runs[segment.Run].Length + kerf).CountOf(needed + kerf);
        return new SegmentOption(
            segment, pattern.Offcut.Species, needed, pattern.Lanes[segment.Lane].NetWidth, Math.Min(most, fit), PlacementValues.Wood(problem, segment));
    }
}
