using System.Collections.Immutable;
using Scrapwright.Core.Calendar;

namespace Scrapwright.Planning.Calendar.Advice;

/// <summary>A problem in which something is bought: its tasks fall away, and what waited for them waits until it is here.</summary>
internal static class BoughtWork
{
    /// <summary>The problem without some tasks.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="dropped">Ids of the tasks.</param>
    /// <param name="name">What stands for them: a task without work.</param>
    /// <param name="day">The day it comes. Post comes late: it is there when that day is over, our own choice; at once when it comes on the day of the start.</param>
    /// <returns>The problem; null when none of the tasks is left, or it comes after the horizon.</returns>
    internal static CalendarProblem? Without(CalendarProblem problem, HashSet<string> dropped, string name, DateOnly day)
    {
        var schedule = problem.Schedule;
        if (!schedule.Tasks.Any(t => dropped.Contains(t.Id)) || Arrival(problem, day) is not { } arrival) return null;
        var waiting = schedule.Links.Where(l => dropped.Contains(l.Before) && !dropped.Contains(l.After)).Select(l => l.After).Distinct();
        return problem with
        {
            Schedule = schedule with
            {
                Tasks = schedule.Tasks.RemoveAll(t => dropped.Contains(t.Id)).Add(new() { Id = name, Minutes = 0, FixedStart = arrival }),
                Links = [.. schedule.Links.Where(l => !dropped.Contains(l.Before) && !dropped.Contains(l.After)), .. waiting.Select(after => new ScheduleLink(name, after))],
                Deliveries = [.. schedule.Deliveries.Select(d => d with { Last = Last(d.Last, dropped, name) })],
            },
        };
    }

    /// <summary>The minute at which something that comes on a day is there; null when that is after the horizon.</summary>
    internal static int? Arrival(CalendarProblem problem, DateOnly day)
    {
        var isAtOnce = day <= DateOnly.FromDateTime(problem.Windows.Start.DateTime);
        var minute = isAtOnce ? 0 : Math.Max(0, problem.Windows.MinuteOf(day.AddDays(1)));
        return minute < problem.Schedule.HorizonMinutes ? minute : null;
    }

    private static ImmutableArray<ScheduleLast> Last(ImmutableArray<ScheduleLast> last, HashSet<string> dropped, string name) =>
        last.Any(l => dropped.Contains(l.Task)) ? [.. last.Where(l => !dropped.Contains(l.Task)), new(name)] : last;
}
