using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Building;

/// <summary>The strips of one glue-up and their order: the same for the search, which counts points for it, and for the plan.</summary>
internal sealed class PanelStrips
{
    private readonly Problem problem;
    private readonly PanelCandidate panel;
    private readonly IReadOnlyList<Segment> strips;
    private readonly ImmutableArray<string> species;

    /// <summary>Takes the strips of a glue-up.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="panel">The glue-up.</param>
    /// <param name="strips">Its strips in any order; copies of one segment in the order in which they lie along its lane.</param>
    internal PanelStrips(Problem problem, PanelCandidate panel, IReadOnlyList<Segment> strips)
    {
        (this.problem, this.panel, this.strips) = (problem, panel, strips);
        species = [.. strips.Select(s => problem.Patterns[s.Pattern].Offcut.Species)];
        Sisters = SisterSegments.Match(problem, panel, strips);
    }

    /// <summary>For each strip the place of its sister in the list, −1 for none; all −1 where book-matched is not wished.</summary>
    internal ImmutableArray<int> Sisters { get; }

    /// <summary>True when the strips lie in an order with every sister opposite its sister.</summary>
    internal bool AreBookMatched => panel.IsBookMatchWished && InOrder(null) is { } order && StripPatterns.IsBookMatched(SistersIn(order));

    /// <summary>The best order of the strips, lower edge first; null when none keeps alike strips apart.</summary>
    internal ImmutableArray<int>? FindBest()
    {
        var contrast = panel.Wish.ContrastIn(problem.Shop);
        var bookMatched = panel.IsBookMatchWished ? StripOrder.BookMatched(species, Sisters, panel.IsStriped ? contrast : 0) : null;
        return bookMatched ?? StripOrder.Find(species, panel.Wish, contrast);
    }

    /// <summary>In the order the maker set for these strips, else in that of the plan before, if neighbours may lie so; else in the best. Null when there is none.</summary>
    internal ImmutableArray<int>? InOrder(GlueUp? former)
    {
        var chosen = problem.Request.Choices.FindOrder(problem.Gifts[panel.GiftIndex].Gift.Label, panel.Part.Key, strips.Select(Chosen));

        // The order of a book-matched panel follows from its sisters, and a point hangs on it: it does not need the plan before.
        var before = former is null || panel.IsBookMatchWished ? null : ChosenOrder.Of(former);
        foreach (var wanted in new[] { chosen, before }.OfType<ChosenOrder>())
        {
            if (FindAsWanted(wanted.Strips) is { } order
                && PanelOrder.Keeps([.. order.Select(i => species[i])], panel.Part.Wish, problem.Shop, AreSistersInTheMiddle(order)))
            {
                return order;
            }
        }

        return FindBest();
    }

    /// <summary>The strips in an order that names offcuts and widths only. Sisters go opposite each other where it lets them.</summary>
    private ImmutableArray<int>? FindAsWanted(ImmutableArray<ChosenStrip> wanted)
    {
        if (wanted.Length != strips.Count)
        {
            return null;
        }

        List<int> open = [.. Enumerable.Range(0, strips.Count)];
        var order = new int[wanted.Length];
        Array.Fill(order, -1);
        for (var place = 0; place < wanted.Length / 2; place++)
        {
            var opposite = wanted.Length - 1 - place;
            if (wanted[place] == wanted[opposite] && open.FindIndex(i => Sisters[i] > i && Chosen(strips[i]) == wanted[place]) is >= 0 and var found)
            {
                (order[place], order[opposite]) = (open[found], Sisters[open[found]]);
                open.RemoveAll(i => i == order[place] || i == order[opposite]);
            }
        }

        for (var place = 0; place < wanted.Length; place++)
        {
            if (order[place] < 0)
            {
                var next = open.FindIndex(i => Chosen(strips[i]) == wanted[place]);
                if (next < 0)
                {
                    return null;
                }

                order[place] = open[next];
                open.RemoveAt(next);
            }
        }

        return [.. order];
    }

    private ImmutableArray<int> SistersIn(ImmutableArray<int> order) => [.. order.Select(i => Sisters[i] < 0 ? -1 : order.IndexOf(Sisters[i]))];

    private bool AreSistersInTheMiddle(ImmutableArray<int> order) => order.Length >= 2 && order.Length % 2 == 0 && Sisters[order[(order.Length / 2) - 1]] == order[order.Length / 2];

    private ChosenStrip Chosen(Segment strip)
    {
        var pattern = problem.Patterns[strip.Pattern];
        return new ChosenStrip(pattern.Offcut.Label, pattern.Lanes[strip.Lane].RoughWidth);
    }
}
