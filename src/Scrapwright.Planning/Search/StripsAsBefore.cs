using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>The level that keeps a plan near the one before: strips that are used for the same.</summary>
internal static class StripsAsBefore
{
    /// <summary>What makes strips alike: gift, panel part (none for boards), offcut and width.</summary>
    internal static (string Gift, string Part, string Offcut, Length RoughWidth) KeyOf(Problem problem, Segment segment)
    {
        var pattern = problem.Patterns[segment.Pattern];
        return (
            problem.Gifts[segment.GiftIn(problem)].Gift.Label, segment.Panel >= 0 ? problem.Panels[segment.Panel].Part.Key : "",
            pattern.Offcut.Label, pattern.Lanes[segment.Lane].RoughWidth);
    }

    /// <summary>How many of each there were.</summary>
    internal static Dictionary<(string Gift, string Part, string Offcut, Length RoughWidth), long> Wanted(Problem problem) =>
        problem.Before.GroupBy(s => (s.Gift, s.Part, s.Offcut, s.RoughWidth)).ToDictionary(g => g.Key, g => g.Sum(s => (long)s.Count));

    /// <summary>How many of them a placement has.</summary>
    internal static long Count(Problem problem, Placement placement)
    {
        var wanted = Wanted(problem);
        return placement.Segments.CountBy(s => KeyOf(problem, s)).Sum(s => Math.Min(s.Value, wanted.GetValueOrDefault(s.Key)));
    }

    /// <summary>How many of them any plan could have: those of gifts still wished for, from offcuts that may be used.</summary>
    internal static long Most(Problem problem)
    {
        var gifts = problem.Gifts.Select(g => g.Gift.Label).ToHashSet(StringComparer.Ordinal);
        var offcuts = problem.Patterns.Select(p => p.Offcut.Label).ToHashSet(StringComparer.Ordinal);
        return problem.Before.Where(s => gifts.Contains(s.Gift) && offcuts.Contains(s.Offcut)).Sum(s => (long)s.Count);
    }

    /// <summary>For each gift, how many of its strips are not as before: where there is something to win.</summary>
    internal static long[] Lacking(Problem problem, Placement placement)
    {
        var lacking = Wanted(problem);
        foreach (var segment in placement.Segments)
        {
            var key = KeyOf(problem, segment);
            if (lacking.GetValueOrDefault(key) > 0)
            {
                lacking[key]--;
            }
        }

        return [.. problem.Gifts.Select(g => lacking.Where(l => l.Key.Gift == g.Gift.Label).Sum(l => l.Value))];
    }
}
