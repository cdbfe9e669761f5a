using System.Collections.Immutable;
using Scrapwright.Core.Calendar.Audit;

namespace Scrapwright.Core.Calendar;

/// <summary>Moves tasks of a calendar by hand, at once: to a minute, to the next or previous window in which they fit, to a day.</summary>
public static class CalendarMoves
{
    // Beyond so many windows nobody waits for an answer: our own choice.
    private const int MostWindows = 14;

    /// <summary>The calendar with tasks one after the other from a minute on; what else has to move does. Only what the audit agrees to is a calendar.</summary>
    /// <param name="calendar">The calendar.</param>
    /// <param name="clock">Its clock.</param>
    /// <param name="tasks">Ids of the tasks, in order; at least one.</param>
    /// <param name="start">Where the first of them starts. [min], from zero</param>
    public static CalendarOutcome Move(WorkCalendar calendar, ShopClock clock, ImmutableArray<string> tasks, int start)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(clock);
        var (problem, schedule, at) = (calendar.Problem, calendar.Schedule, start);
        foreach (var task in tasks)
        {
            switch (ScheduleBuilder.Move(problem, schedule, task, at))
            {
                case ScheduleOutcome.Scheduled scheduled:
                    schedule = scheduled.Schedule;
                    break;
                case ScheduleOutcome.Impossible impossible:
                    return new CalendarOutcome.Impossible([.. impossible.Reasons.Select(r => r with { Where = TitleOf(calendar, r.Where) })]);
                default:
                    return new CalendarOutcome.Unfinished();
            }

            var now = at;
            problem = problem with { Tasks = [.. problem.Tasks.Select(t => t.Id == task ? t with { FixedStart = now } : t)] };
            at += problem.Tasks.First(t => t.Id == task).Minutes;
        }

        var findings = ScheduleAudit.Check(problem, schedule);
        return findings.IsEmpty
            ? new CalendarOutcome.Dated(calendar.With(problem, schedule, clock))
            : new CalendarOutcome.Impossible([.. findings.Select(f => new ScheduleReason(TitleOf(calendar, f.Where), f.Found, f.Expected))]);
    }

    /// <summary>The same into the nearest window later or earlier in which the tasks fit.</summary>
    /// <param name="calendar">The calendar.</param>
    /// <param name="clock">Its clock.</param>
    /// <param name="tasks">Ids of the tasks, in order; at least one.</param>
    /// <param name="isLater">True for later, false for earlier.</param>
    /// <param name="now">Nothing is put before this moment.</param>
    /// <param name="from">From where later and earlier are counted; null for where the tasks are.</param>
    public static CalendarOutcome ToNextWindow(WorkCalendar calendar, ShopClock clock, ImmutableArray<string> tasks, bool isLater, DateTimeOffset now, DateTimeOffset? from = null)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(clock);
        var place = new MovePlaces(calendar, tasks, Math.Max(0, clock.MinuteOf(now) + 1));
        var here = from is { } moment ? clock.MinuteOf(moment) : place.Start;
        var windows = isLater ? place.Windows.Where(w => w.Start > here) : place.Windows.Where(w => w.End <= here).Reverse();
        return First(calendar, clock, tasks, place, windows.Take(MostWindows));
    }

    /// <summary>The same into a window of a day.</summary>
    /// <param name="calendar">The calendar.</param>
    /// <param name="clock">Its clock.</param>
    /// <param name="tasks">Ids of the tasks, in order; at least one.</param>
    /// <param name="day">The day.</param>
    /// <param name="now">Nothing is put before this moment.</param>
    public static CalendarOutcome ToDay(WorkCalendar calendar, ShopClock clock, ImmutableArray<string> tasks, DateOnly day, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(clock);
        var place = new MovePlaces(calendar, tasks, Math.Max(0, clock.MinuteOf(now) + 1));
        return First(calendar, clock, tasks, place, place.Windows.Where(w => DateOnly.FromDateTime(clock.At(w.Start).DateTime) == day));
    }

    /// <summary>The tasks, beside those moved by hand, that start at another time than before; in order of their new time.</summary>
    /// <param name="before">The calendar before.</param>
    /// <param name="after">The calendar after.</param>
    /// <param name="tasks">Ids of those that were moved by hand.</param>
    public static ImmutableArray<CalendarTask> AlsoMoved(WorkCalendar before, WorkCalendar after, ImmutableArray<string> tasks)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var starts = before.Tasks.ToDictionary(t => t.Task.Id, t => t.Start, StringComparer.Ordinal);
        return [.. after.Tasks.Where(t => !tasks.Contains(t.Task.Id) && starts.GetValueOrDefault(t.Task.Id) != t.Start)];
    }

    // The first place that serves: in a browser each try takes a while, and places are in the order in which they push less.
    private static CalendarOutcome First(WorkCalendar calendar, ShopClock clock, ImmutableArray<string> tasks, MovePlaces place, IEnumerable<ScheduleWindow> windows)
    {
        CalendarOutcome.Impossible? refused = null;
        foreach (var start in windows.SelectMany(place.StartsIn))
        {
            switch (Move(calendar, clock, tasks, start))
            {
                case CalendarOutcome.Dated dated: return dated;
                case CalendarOutcome.Impossible impossible: refused ??= impossible; break;
            }
        }

        return refused ?? new CalendarOutcome.Impossible([new(TitleOf(calendar, tasks[0]), "no room there", $"{place.WholeMinutes} min in one window, after what it waits for")]);
    }

    private static string TitleOf(WorkCalendar calendar, string id) => calendar.Tasks.FirstOrDefault(t => t.Task.Id == id)?.Task.Title ?? id;
}
