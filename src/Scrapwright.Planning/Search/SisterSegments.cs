using System.Collections.Immutable;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>Segments that are sisters: the same stretch of two layers that lie side by side in one stick, both for one glue-up.</summary>
internal static class SisterSegments
{
    /// <summary>The segment that would be a segment's sister; null when its lane has none.</summary>
    internal static Segment? Find(Problem problem, Segment segment) =>
        problem.Patterns[segment.Pattern].FindSister(segment.Lane, segment.Run) is var (lane, run) ? segment with { Lane = lane, Run = run } : null;

    /// <summary>For each strip of a glue-up the place of its sister in the list, −1 for none; all −1 where book-matched is not wished.</summary>
    internal static ImmutableArray<int> Match(Problem problem, PanelCandidate panel, IReadOnlyList<Segment> strips)
    {
        var sisters = new int[strips.Count];
        Array.Fill(sisters, -1);
        if (panel.IsBookMatchWished)
        {
            var places = strips.Index().GroupBy(s => s.Item).ToDictionary(g => g.Key, g => g.Select(s => s.Index).ToList());
            foreach (var (segment, mine) in places)
            {
                if (Find(problem, segment) is { } sister && sister.Lane > segment.Lane && places.TryGetValue(sister, out var theirs))
                {
                    foreach (var (one, other) in mine.Zip(theirs))
                    {
                        (sisters[one], sisters[other]) = (other, one);
                    }
                }
            }
        }

        return [.. sisters];
    }

    /// <summary>How many of a segment's copies are laid out opposite a copy of its sister.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="all">All segments of the offcut.</param>
    /// <param name="segment">One of them.</param>
    internal static int Paired(Problem problem, ImmutableArray<Segment> all, Segment segment) =>
        segment.Panel >= 0 && problem.Panels[segment.Panel] is { Done: null, IsBookMatchWished: true } && Find(problem, segment) is { } sister
            ? Math.Min(all.Count(s => s == segment), all.Count(s => s == sister))
            : 0;
}
