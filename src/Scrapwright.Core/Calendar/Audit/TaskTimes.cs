using Scrapwright.Core.Plans.Audit;

namespace Scrapwright.Core.Calendar.Audit;

/// <summary>Every task once, in the problem's order, of its length, in its hours, where it is fixed, and before the horizon.</summary>
internal sealed class TaskTimes(ScheduleProblem problem, Schedule schedule, Findings findings)
{
    /// <summary>Looks at all tasks.</summary>
    internal void Check()
    {
        if (!findings.Same("tasks", schedule.Tasks.Select(t => t?.Task ?? ""), problem.Tasks.Select(t => t.Id))) return;
        for (var i = 0; i < problem.Tasks.Length; i++) Check(problem.Tasks[i], schedule.Tasks[i]);
    }

    private void Check(ScheduleTask task, ScheduledTask scheduled)
    {
        var where = $"task {task.Id}";
        if (!findings.Require(scheduled.Start >= 0 && scheduled.End <= problem.HorizonMinutes, where, Span(scheduled), $"from 0 to {problem.HorizonMinutes}")) return;
        findings.Equal($"{where}, minutes", scheduled.End - scheduled.Start, task.Minutes);
        findings.Require(scheduled.Start >= task.EarliestStart, $"{where}, start", scheduled.Start, $"{task.EarliestStart} or later");
        if (task.FixedStart is { } start) findings.Equal($"{where}, fixed start", scheduled.Start, start);
        if (task.Hours.Length > 0)
        {
            var windows = problem.Hours.Single(h => h.Key == task.Hours).Windows;
            findings.Require(windows.Any(w => w.Start <= scheduled.Start && scheduled.End <= w.End), $"{where}, hours", Span(scheduled), $"within one window of {task.Hours}");
        }

        foreach (var need in task.Needs)
        {
            findings.Require(
                (long)scheduled.End + need.HeldMinutes <= problem.HorizonMinutes, $"{where}, {need.Resource}", $"held until {(long)scheduled.End + need.HeldMinutes}", $"until {problem.HorizonMinutes} at most");
        }
    }

    private static string Span(ScheduledTask task) => $"from {task.Start} to {task.End}";
}
