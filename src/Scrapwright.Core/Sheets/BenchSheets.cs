using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Sheets;

/// <summary>
/// The bench sheets of a plan: an overview, the parts list, one sheet or more for each visit to a station while wood is milled, one or more for each gift
/// from then on, what the year does to fits and panels, and what goes back to the pile.
/// </summary>
public static class BenchSheets
{
    /// <summary>The sheets in working order.</summary>
    public static ImmutableArray<Sheet> For(Plan plan, PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return For(plan, plan.Request.DeriveDesigns(), paper);
    }

    /// <summary>The sheets in working order, for designs that are already derived.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="designs">What came of the designs of the plan's gifts.</param>
    /// <param name="paper">The paper.</param>
    public static ImmutableArray<Sheet> For(Plan plan, ImmutableArray<GiftDesign> designs, PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(paper);
        var facts = new PlanFacts(plan, designs);
        var visits = Visits(plan);
        // The overview names the sheet of each visit, so the visits are laid out first to count their pages.
        var (pages, _) = Lay(new PageFlow(paper, facts), facts, visits);
        var front = new PageFlow(paper, facts);
        OverviewPages.Add(front, facts, visits, 0, pages);
        OverviewPages.AddParts(front, facts);
        var flow = new PageFlow(paper, facts);
        OverviewPages.Add(flow, facts, visits, front.NextPage - 1, pages);
        OverviewPages.AddParts(flow, facts);
        Lay(flow, facts, visits);
        FitPages.Add(flow, facts);
        LeftoverPages.Add(flow, facts);
        return flow.Sheets();
    }

    // Milling: as long as the maker stays at a station. From the first assembly step of a gift: as long as it is the same gift.
    private static List<(string Title, ImmutableArray<Step> Steps)> Visits(Plan plan)
    {
        var visits = new List<(string, ImmutableArray<Step>)>();
        var current = ImmutableArray.CreateBuilder<Step>();
        static string Key(Step step) => step.AssemblyIndex >= 0 ? step.Gift : PlanWords.Of(step.Station);
        static bool Same(Step a, Step b) => (a.AssemblyIndex >= 0) == (b.AssemblyIndex >= 0) && Key(a) == Key(b);
        foreach (var step in plan.Steps)
        {
            if (current.Count > 0 && !Same(current[^1], step))
            {
                visits.Add((Key(current[^1]), current.ToImmutable()));
                current.Clear();
            }

            current.Add(step);
        }

        if (current.Count > 0) visits.Add((Key(current[^1]), current.ToImmutable()));
        return visits;
    }

    private static (ImmutableArray<int> Pages, PageFlow Flow) Lay(PageFlow flow, PlanFacts facts, List<(string Title, ImmutableArray<Step> Steps)> visits)
    {
        var pages = ImmutableArray.CreateBuilder<int>();
        foreach (var (title, steps) in visits)
        {
            pages.Add(flow.NextPage);
            if (steps[0].AssemblyIndex >= 0) GiftPages.Add(flow, facts, title, steps);
            else StationPages.Add(flow, facts, title, steps);
        }

        return (pages.ToImmutable(), flow);
    }
}
