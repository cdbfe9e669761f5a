using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar;

/// <summary>Orders on several threads, each with its own chance.</summary>
internal sealed class OrderSearches
{
    private readonly OrderSearch[] searches;

    /// <summary>Searches that have not begun.</summary>
    internal OrderSearches(ScheduleFacts facts, StartRanges ranges, int seed, int workers) =>
        searches = [.. Enumerable.Range(0, workers).Select(worker => new OrderSearch(facts, ranges, seed + worker))];

    /// <summary>The best found; the first one when nothing is better.</summary>
    /// <param name="first">Where to begin.</param>
    /// <param name="seconds">Longest time.</param>
    /// <param name="passes">Most orders tried on each thread.</param>
    /// <param name="bounds">It ends when these are reached.</param>
    /// <param name="cancellationToken">Ends it.</param>
    internal PlacedTasks Run(PlacedTasks first, double seconds, int passes, long[] bounds, CancellationToken cancellationToken) =>
        BestOfThreads.Find(searches, search => search.Run(first, seconds, passes, bounds, cancellationToken));
}
