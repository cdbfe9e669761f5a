using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>Gives the tasks of a calendar the times of another schedule, without the plan it was made from.</summary>
internal sealed class CalendarRetiming
{
    private readonly WorkCalendar calendar;
    private readonly ScheduleProblem problem;
    private readonly Schedule schedule;
    private readonly ShopClock clock;
    private readonly Dictionary<string, ScheduledTask> times;

    internal CalendarRetiming(WorkCalendar calendar, ScheduleProblem problem, Schedule schedule, ShopClock clock)
    {
        (this.calendar, this.problem, this.schedule, this.clock) = (calendar, problem, schedule, clock);
        times = schedule.Tasks.ToDictionary(t => t.Task, StringComparer.Ordinal);
        if (calendar.Tasks.FirstOrDefault(t => !times.ContainsKey(t.Task.Id)) is { } lacking)
            throw new ArgumentException($"The schedule has no time for {lacking.Task.Id}. Maybe it is of another problem.", nameof(schedule));
    }

    internal WorkCalendar Make()
    {
        CalendarTask[] tasks = [.. calendar.Tasks.OrderBy(t => times[t.Task.Id].Start).ThenBy(t => times[t.Task.Id].End).Select(Task)];
        return calendar with
        {
            Problem = problem,
            Schedule = schedule,
            Tasks = [.. tasks],
            Settings = [.. schedule.SetUps.OrderBy(s => s.Start).Select(Setting)],
            Gifts = [.. calendar.Gifts.Select(Gift)],
            Evenings = [.. CalendarWindows.Of(problem).Select(w => Evening(w, tasks)).Where(e => !e.Tasks.IsEmpty)],
        };
    }

    private CalendarTask Task(CalendarTask task)
    {
        var time = times[task.Task.Id];
        return new(task.Task, clock.At(time.Start), clock.At(time.End), clock.At(time.End + task.Task.WaitMinutes));
    }

    private CalendarSetting Setting(ScheduledSetUp time)
    {
        var setting = calendar.Settings.First(s => s.Setting.Key == time.SetUp).Setting;
        return new(setting, clock.At(time.Start), clock.At(time.Start + setting.Minutes), clock.At(time.End));
    }

    private CalendarGift Gift(CalendarGift gift)
    {
        if (problem.Deliveries.FirstOrDefault(d => d.Id == gift.Gift) is not { } delivery) return gift;
        var ready = clock.At(delivery.Last.Max(l => times[l.Task].End + l.WaitMinutes));
        return gift with { ReadyAt = ready, SlackDays = gift.DueAt is { } due ? (int)Math.Floor((due - ready).TotalDays) : null };
    }

    private CalendarEvening Evening(ScheduleWindow window, CalendarTask[] tasks) => new(
        clock.At(window.Start), clock.At(window.End),
        [.. tasks.Select(t => t.Task.Id).Where(id => window.Holds(times[id].Start, times[id].End))]);
}
