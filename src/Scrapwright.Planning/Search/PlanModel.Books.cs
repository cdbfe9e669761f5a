using Google.OrTools.Sat;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <content>Book-matched panels.</content>
internal sealed partial class PlanModel
{
    private readonly Dictionary<int, (BoolVar Matches, BoolVar HasSingle)> books = [];

    /// <summary>A panel can be book-matched when all its strips, one at most left out for the middle, make pairs of sisters.</summary>
    private BoolVar BookMatches(PanelCandidate panel) => Book(panel).Matches;

    private (BoolVar Matches, BoolVar HasSingle) Book(PanelCandidate panel)
    {
        if (!books.TryGetValue(panel.Index, out var book))
        {
            books[panel.Index] = book = AddBook(panel);
        }

        return book;
    }

    private (BoolVar Matches, BoolVar HasSingle) AddBook(PanelCandidate panel)
    {
        var pairs = SisterPairs(panel);
        var strips = byPanel[panel.Index];
        var all = LinearExpr.Sum(strips.Select(s => s.Count));
        var hasSingle = Follows(model.NewBoolVar(""), h => Unpaired(h) == 1 ? 1 : 0);
        var matches = Follows(model.NewBoolVar(""), h => h[Panel(panel)] == 1 && Unpaired(h) <= 1 && pairs.Any(p => h[p] > 0) && CanLieApart(panel, Unpaired(h), h) ? 1 : 0);
        model.AddImplication(matches, Panel(panel));
        model.Add(all == (2 * LinearExpr.Sum(pairs)) + hasSingle).OnlyEnforceIf(matches);
        model.Add(LinearExpr.Sum(pairs) >= 1).OnlyEnforceIf(matches);
        return (matches, hasSingle);

        long Unpaired(HintValues h) => strips.Sum(s => h[s.Count]) - (2 * pairs.Sum(p => h[p]));
    }

    /// <summary>For each stretch of two sister lanes, how many pairs come of it.</summary>
    private List<IntVar> SisterPairs(PanelCandidate panel)
    {
        var bySegment = byPanel[panel.Index].ToDictionary(s => s.Segment);
        var pairs = new List<IntVar>();
        foreach (var one in byPanel[panel.Index])
        {
            if (SisterSegments.Find(problem, one.Segment) is { } sister && sister.Lane > one.Segment.Lane && bySegment.TryGetValue(sister, out var other))
            {
                var pair = Follows(model.NewIntVar(0, Math.Min(one.Most, other.Most), ""), h => Math.Min(h[one.Count], h[other.Count]));
                model.Add(pair <= one.Count);
                model.Add(pair <= other.Count);
                pairs.Add(pair);
            }
        }

        return pairs;
    }

    /// <summary>
    /// From the middle outwards strips that look alike are kept apart; the pair in the middle may touch, so that there may be two more of them than of the others.
    /// A panel that is not book-matched keeps them apart as any other.
    /// </summary>
    private void StayApartUnlessBookMatched(PanelCandidate panel, List<SpeciesCount> counts, SpeciesConflicts conflicts)
    {
        var (matches, hasSingle) = Book(panel);
        foreach (var clique in conflicts.Cliques())
        {
            var surplus = Sum(counts, clique) - Sum(counts, conflicts.GoingWithAny(clique));
            model.Add(surplus <= Panel(panel)).OnlyEnforceIf(matches.Not());
            model.Add(surplus + hasSingle <= 2).OnlyEnforceIf(matches);
        }

        foreach (var species in counts)
        {
            model.Add(Sum(counts, conflicts.GoingWithAny([species.Species])) >= species.IsPresent).OnlyEnforceIf(matches.Not());
        }
    }

    /// <summary>Whether counts keep the rule above.</summary>
    private bool CanLieApart(PanelCandidate panel, long unpaired, HintValues values)
    {
        if (!panel.IsStriped)
        {
            return true;
        }

        var counts = panelSpecies[panel.Index];
        var conflicts = new SpeciesConflicts(counts.Select(c => c.Species), panel.Wish.ContrastIn(problem.Shop));
        return conflicts.Cliques().All(clique => Count(clique) - Count(conflicts.GoingWithAny(clique)) + unpaired <= 2);

        long Count(System.Collections.Immutable.ImmutableHashSet<string> species) => counts.Where(c => species.Contains(c.Species)).Sum(c => values[c.Count]);
    }
}
