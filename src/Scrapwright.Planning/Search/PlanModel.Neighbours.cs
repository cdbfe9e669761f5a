using System.Collections.Immutable;
using Google.OrTools.Sat;
using Scrapwright.Core.Designs;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <content>Which strips may lie side by side.</content>
internal sealed partial class PlanModel
{
    /// <summary>
    /// Strips that look alike can be kept apart: no more of them than of strips that go beside one of them, plus one; and each has a neighbour it goes with.
    /// Needed, and nearly always enough; the order is checked afterwards. In a graduated panel each species comes once.
    /// </summary>
    private void AlikeStripsStayApart(PanelCandidate panel)
    {
        if (!panel.IsStriped)
        {
            return;
        }

        var counts = panelSpecies[panel.Index];
        if (panel.Wish.Pattern == StripPattern.Graduated)
        {
            counts.ForEach(species => model.Add(species.Count <= 1));
            return;
        }

        var conflicts = new SpeciesConflicts(counts.Select(c => c.Species), panel.Wish.ContrastIn(problem.Shop));
        if (panel.Wish.Pattern == StripPattern.Accent)
        {
            OneOfWoodsThatLookAlike(counts, conflicts);
            return;
        }

        if (panel.IsBookMatchWished)
        {
            StayApartUnlessBookMatched(panel, counts, conflicts);
            return;
        }

        foreach (var clique in conflicts.Cliques())
        {
            model.Add(Sum(counts, clique) <= Sum(counts, conflicts.GoingWithAny(clique)) + Panel(panel));
        }

        foreach (var species in counts)
        {
            model.Add(Sum(counts, conflicts.GoingWithAny([species.Species])) >= species.IsPresent);
        }
    }

    private static LinearExpr Sum(List<SpeciesCount> counts, ImmutableHashSet<string> species) =>
        LinearExpr.Sum(counts.Where(c => species.Contains(c.Species)).Select(c => c.Count));
}
