using System.Collections.Immutable;
using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Core.Calendar;

/// <summary>
/// The critical path method (Kelley and Walker, 1959; from memory): how early and how late each task can be when links' least gaps, earliest starts and what waits at the end are all that counts. Resources,
/// hours, settings, most gaps and fixed starts are left out.
/// </summary>
public static class CriticalPath
{
    /// <summary>Every task's room, in the problem's order.</summary>
    /// <param name="problem">A problem without faults.</param>
    /// <exception cref="ArgumentException">The problem has faults.</exception>
    public static ImmutableArray<TaskSlack> Of(ScheduleProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        if (ScheduleProblemFaults.Find(problem) is [var fault, ..]) throw new ArgumentException($"{fault.Where}: found {fault.Found}, expected {fault.Expected}.", nameof(problem));
        var facts = new ScheduleFacts(problem);
        var early = Early(facts);
        var late = Late(facts, Whole(facts, early));
        return [.. problem.Tasks.Select((t, i) => new TaskSlack(t.Id, early[i], early[i] + t.Minutes, late[i], late[i] + t.Minutes))];
    }

    /// <summary>When the last task is over and the last delivery ready, by links alone. [min]</summary>
    /// <param name="problem">A problem without faults.</param>
    /// <exception cref="ArgumentException">The problem has faults.</exception>
    public static int LengthMinutes(ScheduleProblem problem)
    {
        var slack = Of(problem).ToDictionary(s => s.Task, s => s.EarlyEnd, StringComparer.Ordinal);
        return slack.Values.Concat(problem.Deliveries.SelectMany(d => d.Last).Select(l => slack[l.Task] + l.WaitMinutes)).DefaultIfEmpty(0).Max();
    }

    private static int[] Early(ScheduleFacts facts)
    {
        int[] early = [.. facts.Problem.Tasks.Select(t => t.EarliestStart)];
        foreach (var task in facts.Order)
        {
            foreach (var link in facts.Into[task]) early[task] = Math.Max(early[task], early[link.Before] + facts.Minutes[link.Before] + link.Least);
        }

        return early;
    }

    private static int Whole(ScheduleFacts facts, int[] early)
    {
        var whole = early.Select((start, task) => start + facts.Minutes[task]).DefaultIfEmpty(0).Max();
        foreach (var delivery in facts.Deliveries) whole = Math.Max(whole, LevelValues.Ready(facts, delivery, early));
        return whole;
    }

    private static int[] Late(ScheduleFacts facts, int whole)
    {
        int[] late = [.. facts.Minutes.Select(minutes => whole - minutes)];
        foreach (var (task, wait) in facts.Deliveries.SelectMany(d => d.Last)) late[task] = Math.Min(late[task], whole - wait - facts.Minutes[task]);
        for (var i = facts.Count - 1; i >= 0; i--)
        {
            var task = facts.Order[i];
            foreach (var link in facts.OutOf[task]) late[task] = Math.Min(late[task], late[link.After] - link.Least - facts.Minutes[task]);
        }

        return late;
    }
}
