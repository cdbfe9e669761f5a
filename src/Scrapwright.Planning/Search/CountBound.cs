using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>How many gifts a pile can give at most, from the linear relaxation in which wood is divided at will.</summary>
internal static class CountBound
{
    /// <summary>No placement makes gifts of more weight.</summary>
    internal static long MostWorth(Problem problem, SegmentOptions options)
    {
        var all = problem.Gifts.Sum(g => g.Weight);
        using var master = new ColumnMaster(problem, options, new GiftGroups(problem, options), 0, compact: true);

        // A linear solver's numbers are good to about nine digits; a whole gift that is short by less is not denied.
        return master.MostWorth() is { } most ? Math.Min(all, (long)Math.Floor(most + 1e-4)) : all;
    }
}
