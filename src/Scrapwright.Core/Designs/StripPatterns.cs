using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Designs;

/// <summary>Whether the strips of a glue-up can make the pattern that is wished.</summary>
public static class StripPatterns
{
    /// <summary>An accent is at most this part of the panel's width. Common practice, no source: wider, it reads as one more stripe.</summary>
    public const int AccentShare = 4;

    /// <summary>True for patterns that not all strips can make, so that a point is given for them.</summary>
    public static bool IsEarned(StripPattern pattern) => pattern is StripPattern.Mirrored or StripPattern.BookMatched or StripPattern.Alternating or StripPattern.Accent;

    /// <summary>
    /// Whether the strips make it: mirrored when just one wood comes an odd number of times, which takes the middle; alternating when there are two woods,
    /// as many strips of each or one more; an accent when one narrow strip lies among two or more of one other wood; book-matched when every strip's sister lies opposite.
    /// </summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="strips">Species key and net width of each strip, in any order.</param>
    /// <param name="panelWidth">Width of the finished part.</param>
    /// <param name="sisters">For each strip in order the place of its sister, −1 for none; left out where nobody asks for book-matched.</param>
    public static bool IsMet(StripPattern pattern, IEnumerable<(string Species, Length Width)> strips, Length panelWidth, ImmutableArray<int> sisters = default)
    {
        var woods = strips.GroupBy(s => s.Species, StringComparer.Ordinal).Select(g => (Count: g.Count(), Widest: g.Max(s => s.Width))).OrderBy(g => g.Count).ToArray();
        return pattern switch
        {
            StripPattern.Mirrored => woods.Count(w => w.Count % 2 == 1) == 1,
            StripPattern.BookMatched => !sisters.IsDefault && IsBookMatched(sisters),
            StripPattern.Alternating => woods is [var few, var many] && many.Count - few.Count <= 1,
            StripPattern.Accent => woods is [{ Count: 1 } accent, { Count: >= 2 }] && accent.Widest * AccentShare <= panelWidth,
            _ => true,
        };
    }

    /// <summary>Whether every strip has its sister on the other side of the middle, at the same place; a single strip in the middle needs none.</summary>
    /// <param name="sisters">For each strip in order the place of its sister, −1 for none.</param>
    public static bool IsBookMatched(ImmutableArray<int> sisters) =>
        sisters.Length >= 2 && sisters.Index().All(s => s.Item == sisters.Length - 1 - s.Index || s.Index == sisters.Length - 1 - s.Index);
}
