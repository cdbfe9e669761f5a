namespace Scrapwright.Core.Calendar.Building;

/// <summary>Placements that keep to the calendar before where it still holds.</summary>
internal static class Keeping
{
    /// <summary>The best of them, or null where there was no calendar before, or none finds a place for every task.</summary>
    /// <param name="facts">The problem.</param>
    /// <param name="ranges">When tasks can start.</param>
    /// <param name="placing">Places by order; left as it was found.</param>
    internal static PlacedTasks? Best(ScheduleFacts facts, StartRanges ranges, ListPlacing placing)
    {
        if (facts.Problem.Before.IsEmpty) return null;
        var best = new Moving(facts, ranges, new Schedule { Tasks = facts.Problem.Before }, ScheduleFacts.None).Run();
        var keys = facts.Before.Select(start => start == ScheduleFacts.None ? long.MaxValue : start).ToArray();

        // In the old order within the old windows, then also before them.
        for (var task = 0; task < facts.Count; task++) placing.Floor[task] = facts.Stay[task] is var (from, to) && from <= to ? from : 0;
        best = Better(best, Placed(facts, placing, keys));
        Array.Clear(placing.Floor);
        return Better(best, Placed(facts, placing, keys));
    }

    private static PlacedTasks? Placed(ScheduleFacts facts, ListPlacing placing, long[] keys) => placing.Run(keys) ? PlacedTasks.Of(facts, placing.Bench) : null;

    private static PlacedTasks? Better(PlacedTasks? one, PlacedTasks? other) =>
        one is null || (other is not null && LevelValues.Compare(other.Values, one.Values) < 0) ? other : one;
}
