using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar;

/// <summary>Evenings filled one after the other, on several threads; where there are hours and settings.</summary>
internal sealed class EveningSearch
{
    private readonly EveningClimb[] climbs;

    /// <summary>False where there are no hours or no settings: then nothing is searched.</summary>
    internal bool HasEvenings => climbs.Length > 0;

    /// <summary>A search that has not begun.</summary>
    internal EveningSearch(ScheduleFacts facts, StartRanges ranges, int seed, int workers)
    {
        var hasEvenings = facts.SetUps.Length > 0 && facts.Windows.Any(w => w.Length > 0);
        climbs = hasEvenings ? [.. Enumerable.Range(0, workers).Select(worker => new EveningClimb(facts, ranges, seed + worker))] : [];
    }

    /// <summary>The best found; the first one when nothing is better.</summary>
    /// <param name="first">Where to begin.</param>
    /// <param name="seconds">Longest time.</param>
    /// <param name="passes">Most passes of each thread.</param>
    /// <param name="bounds">It ends when these are reached.</param>
    /// <param name="cancellationToken">Ends it.</param>
    internal PlacedTasks Run(PlacedTasks first, double seconds, int passes, long[] bounds, CancellationToken cancellationToken)
    {
        if (!HasEvenings) return first;
        return BestOfThreads.Find(climbs, climb =>
        {
            climb.Consider(first);
            climb.Run(seconds, passes, bounds, cancellationToken);
            return climb.Best!;
        });
    }
}
