using System.Diagnostics;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Audit;
using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar;

/// <summary>Makes calendars: problems in, outcomes out.</summary>
public static class Scheduler
{
    /// <summary>Searches for the best schedule within the limits. The search runs on a thread of its own.</summary>
    /// <param name="problem">What is to be fitted into time.</param>
    /// <param name="limits">When to stop.</param>
    /// <param name="progress">Told of every improvement; may be null.</param>
    /// <param name="cancellationToken">Ends the search; the best schedule so far is the outcome, or unfinished when there is none.</param>
    /// <exception cref="InvalidOperationException">The audit rejected the schedule: a fault of this program, never shown as a calendar.</exception>
    public static Task<ScheduleOutcome> SolveAsync(ScheduleProblem problem, PlanLimits limits, IProgress<ScheduleProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(limits);
        return Task.Factory.StartNew(() => Solve(problem, limits, progress, cancellationToken), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
    }

    private static ScheduleOutcome Solve(ScheduleProblem problem, PlanLimits limits, IProgress<ScheduleProgress>? progress, CancellationToken cancellationToken)
    {
        var clock = Stopwatch.StartNew();
        var faults = ScheduleProblemFaults.Find(problem);
        if (!faults.IsEmpty) return new ScheduleOutcome.Impossible(faults);
        var facts = new ScheduleFacts(problem);
        var ranges = new StartRanges(facts, facts.LatestEnd);
        var obstacles = Obstacles.Find(facts, ranges);
        if (!obstacles.IsEmpty) return new ScheduleOutcome.Impossible(obstacles);
        var search = new ScheduleSearch(facts, ranges, limits, progress, cancellationToken);
        search.Run();
        if (search.Best is { } best)
        {
            var ordered = EveningOrder.Of(facts, ranges, best);
            var schedule = Audited(problem, ordered.ToSchedule(facts, search.Bounds));
            if (!ReferenceEquals(ordered, best)) progress?.Report(new ScheduleProgress("By setting", clock.Elapsed, schedule.Levels, schedule));
            return new ScheduleOutcome.Scheduled(schedule);
        }

        return search.IsProvenImpossible
            ? new ScheduleOutcome.Impossible([new ScheduleReason("tasks", "no way to fit all of them together", $"one within {problem.HorizonMinutes} min that keeps all links, hours and capacities")])
            : new ScheduleOutcome.Unfinished();
    }

    /// <summary>The schedule itself once the audit has found nothing.</summary>
    /// <exception cref="InvalidOperationException">The audit rejected it.</exception>
    internal static Schedule Audited(ScheduleProblem problem, Schedule schedule)
    {
        var findings = ScheduleAudit.Check(problem, schedule);
        return findings.IsEmpty
            ? schedule
            : throw new InvalidOperationException(
                $"The audit rejected the schedule: {string.Join("; ", findings.Take(5).Select(f => $"{f.Where}: found {f.Found}, expected {f.Expected}"))}");
    }
}
