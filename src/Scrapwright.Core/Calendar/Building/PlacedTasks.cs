using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar.Building;

/// <summary>All tasks of a problem in their places, and what that is worth.</summary>
internal sealed record PlacedTasks(int[] Start, (int SetUp, int Start, int End)[] SetUps, long[] Values)
{
    /// <summary>What stands in a shop now.</summary>
    internal static PlacedTasks Of(ScheduleFacts facts, Bench bench) =>
        new([.. bench.Start], [.. bench.SetUps], LevelValues.Of(facts, bench.Start, LevelValues.SetUpMinutes(facts, bench)));

    /// <summary>With names in place of numbers.</summary>
    /// <param name="facts">The problem.</param>
    /// <param name="bounds">By level; none above the value.</param>
    internal Schedule ToSchedule(ScheduleFacts facts, IReadOnlyList<long> bounds) => new()
    {
        Tasks = [.. facts.Problem.Tasks.Select((task, i) => new ScheduledTask(task.Id, Start[i], Start[i] + task.Minutes))],
        SetUps =
        [
            .. SetUps.Select(s => new ScheduledSetUp(facts.Problem.SetUps[s.SetUp].Key, s.Start, s.End)).OrderBy(s => s.Start).ThenBy(s => s.SetUp, StringComparer.Ordinal),
        ],
        Levels = [.. facts.Levels.Select((level, i) => new ScheduleLevel(level.Kind, Values[i], Math.Min(bounds[i], Values[i]), level.Priority))],
    };
}
