using System.Collections.Immutable;
using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Core.Calendar;

/// <summary>
/// Schedules at once, without a search: tasks are placed one after the other, each as early as it fits. Good, seldom the best; its bounds hold, but are not close.
/// A setting that stands in the window is used again. When it finds no place for a task there may still be a schedule: only <c>Impossible</c> for a reason that the problem itself has is final.
/// </summary>
public static class ScheduleBuilder
{
    /// <summary>The best of several orders.</summary>
    /// <param name="problem">The problem.</param>
    public static ScheduleOutcome Build(ScheduleProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return WithFacts(problem, (facts, ranges) =>
        {
            var placing = new ListPlacing(facts, ranges);
            var best = Best(facts, ranges, placing);
            return best is null ? NoPlace(facts, ranges, placing) : Scheduled(facts, ranges, best);
        });
    }

    /// <summary>The schedule in which tasks are placed in an order, as far as links allow: the same order with other minutes shows what a longer task moves.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="order">Ids of tasks; those not named come last, unknown ones are passed over.</param>
    public static ScheduleOutcome InOrder(ScheduleProblem problem, ImmutableArray<string> order)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return WithFacts(problem, (facts, ranges) =>
        {
            var keys = new long[facts.Count];
            Array.Fill(keys, long.MaxValue);
            for (var i = 0; i < order.Length; i++)
            {
                if (facts.Number.TryGetValue(order[i], out var task)) keys[task] = i;
            }

            var placing = new ListPlacing(facts, ranges);
            return placing.Run(keys) ? Scheduled(facts, ranges, PlacedTasks.Of(facts, placing.Bench)) : NoPlace(facts, ranges, placing);
        });
    }

    /// <summary>
    /// Moves one task and shows what else moves: the task starts just then; the others keep their start where it still holds, and otherwise go to the earliest later place, in their old order.
    /// The outcome has the moved task's start among its tasks, not in the problem; its bounds are by links and hours alone, so that a browser has the answer at once.
    /// </summary>
    /// <param name="problem">The problem.</param>
    /// <param name="schedule">A schedule of it; tasks that it does not have are placed last.</param>
    /// <param name="task">Id of the task that is moved.</param>
    /// <param name="start">Where it starts from now on. [min], from zero</param>
    public static ScheduleOutcome Move(ScheduleProblem problem, Schedule schedule, string task, int start)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(schedule);
        if (problem.Tasks.All(t => t.Id != task)) return new ScheduleOutcome.Impossible([new ScheduleReason(task, "no such task", "one of the problem's tasks")]);
        var moved = problem with { Tasks = [.. problem.Tasks.Select(t => t.Id == task ? t with { FixedStart = start } : t)] };
        return WithFacts(moved, (facts, ranges) =>
        {
            var moving = new Moving(facts, ranges, schedule, facts.Number[task]);
            return moving.Run() is { } placement ? new ScheduleOutcome.Scheduled(placement.ToSchedule(facts, LevelBounds.Of(facts, ranges, isQuick: true))) : NoPlace(facts, ranges, moving.Placing);
        });
    }

    /// <summary>The best of the orders, or null when none has a place for every task.</summary>
    internal static PlacedTasks? Best(ScheduleFacts facts, StartRanges ranges, ListPlacing placing)
    {
        PlacedTasks? best = null;
        foreach (var keys in PriorityRules.All(facts, ranges))
        {
            if (!placing.Run(keys)) continue;
            var placement = PlacedTasks.Of(facts, placing.Bench);
            if (best is null || LevelValues.Compare(placement.Values, best.Values) < 0) best = placement;
        }

        return best;
    }

    private static ScheduleOutcome WithFacts(ScheduleProblem problem, Func<ScheduleFacts, StartRanges, ScheduleOutcome> build)
    {
        var faults = ScheduleProblemFaults.Find(problem);
        if (!faults.IsEmpty) return new ScheduleOutcome.Impossible(faults);
        var facts = new ScheduleFacts(problem);
        var ranges = new StartRanges(facts, facts.LatestEnd);
        return ranges.Stuck == ScheduleFacts.None ? build(facts, ranges) : new ScheduleOutcome.Impossible(Obstacles.Find(facts, ranges));
    }

    private static ScheduleOutcome.Scheduled Scheduled(ScheduleFacts facts, StartRanges ranges, PlacedTasks placement) => new(placement.ToSchedule(facts, LevelBounds.Of(facts, ranges)));

    private static ScheduleOutcome.Impossible NoPlace(ScheduleFacts facts, StartRanges ranges, ListPlacing placing)
    {
        var obstacles = Obstacles.Find(facts, ranges);
        if (!obstacles.IsEmpty) return new ScheduleOutcome.Impossible(obstacles);
        var task = placing.Stuck == ScheduleFacts.None ? "tasks" : facts.Problem.Tasks[placing.Stuck].Id;
        return new ScheduleOutcome.Impossible([new ScheduleReason(task, "no place among the other tasks", $"one within {facts.Problem.HorizonMinutes} min that keeps all links, hours and capacities")]);
    }
}
