using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar;

/// <summary>The same search on several threads.</summary>
internal static class BestOfThreads
{
    /// <summary>The best of what the searches find, of alike ones the first.</summary>
    /// <param name="searches">One for each thread; at least one.</param>
    /// <param name="run">What each finds.</param>
    internal static PlacedTasks Find<T>(T[] searches, Func<T, PlacedTasks> run)
    {
        var found = new PlacedTasks[searches.Length];
        Parallel.For(0, searches.Length, new ParallelOptions { MaxDegreeOfParallelism = searches.Length }, i => found[i] = run(searches[i]));
        return found.Aggregate((one, other) => LevelValues.Compare(other.Values, one.Values) < 0 ? other : one);
    }
}
