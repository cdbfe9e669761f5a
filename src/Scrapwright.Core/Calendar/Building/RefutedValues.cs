namespace Scrapwright.Core.Calendar.Building;

/// <summary>
/// Bounds by contradiction: a value of a level is taken as kept, latest ends follow from it backwards through links and windows, and where hours cannot hold the work that has to lie between, every schedule has more
/// (destructive lower bounds; Klein and Scholl, 1999; from memory).
/// </summary>
internal sealed class RefutedValues(ScheduleFacts facts, StartRanges ranges)
{
    private readonly Overload overload = new(facts);

    /// <summary>What no schedule has less of, at least the bound known.</summary>
    /// <param name="level">Number of the level: a lateness, all ready, or a slack.</param>
    /// <param name="bound">Known already.</param>
    /// <param name="most">No value above it is of interest.</param>
    /// <param name="held">Values of the levels before that are kept; none where the bound is to hold whatever they are.</param>
    internal long Bound(int level, long bound, long most, ReadOnlySpan<long> held)
    {
        var latestEnd = facts.LatestEnd.ToArray();
        for (var i = 0; i < held.Length; i++) Deadlines.Limit(facts, latestEnd, ranges, i, held[i]);
        while (bound < most)
        {
            var middle = bound + ((most - bound) / 2);
            if (IsRefuted(level, middle, latestEnd)) bound = middle + 1;
            else most = middle;
        }

        return bound;
    }

    private bool IsRefuted(int level, long value, int[] held)
    {
        int[] latestEnd = [.. held];
        Deadlines.Limit(facts, latestEnd, ranges, level, value);
        return overload.IsIn(new StartRanges(facts, latestEnd, ranges.Earliest));
    }
}
