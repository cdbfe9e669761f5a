using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>Turns minutes into days and evenings.</summary>
internal sealed class WorkCalendarMaker
{
    private readonly CalendarProblem problem;
    private readonly Schedule schedule;
    private readonly Dictionary<string, ScheduledTask> times;

    internal WorkCalendarMaker(CalendarProblem problem, Schedule schedule)
    {
        (this.problem, this.schedule) = (problem, schedule);
        var ids = problem.Schedule.Tasks.Select(t => t.Id).ToHashSet(StringComparer.Ordinal);
        if (schedule.Tasks.FirstOrDefault(t => !ids.Remove(t.Task)) is { } stranger) throw new ArgumentException($"The problem has no task {stranger.Task}, or has it once only. Maybe the schedule is of another problem.", nameof(schedule));
        if (ids.Count > 0) throw new ArgumentException($"The schedule has no time for {ids.First()}. Maybe it is of another problem.", nameof(schedule));
        times = schedule.Tasks.ToDictionary(t => t.Task, StringComparer.Ordinal);
    }

    private WorkWindows Windows => problem.Windows;

    internal WorkCalendar Make()
    {
        CalendarTask[] tasks = [.. problem.Work.Tasks.Where(t => times.ContainsKey(t.Id)).OrderBy(t => times[t.Id].Start).ThenBy(t => times[t.Id].End).Select(Task)];
        return new()
        {
            Fingerprint = problem.Request.Plan.Fingerprint,
            Start = Windows.Start,
            TimeZone = Windows.Zone.Id,
            Hours = problem.Request.Hours,
            Shopping = problem.Request.Plan.Shopping,
            Times = problem.Request.Times,
            Problem = problem.Schedule,
            Schedule = schedule,
            Tasks = [.. tasks],
            Settings = [.. schedule.SetUps.OrderBy(s => s.Start).Select(Setting)],
            Gifts = [.. problem.Work.Gifts.Select(Gift)],
            Evenings = [.. Windows.All.Select(w => Evening(w, tasks)).Where(e => !e.Tasks.IsEmpty)],
        };
    }

    private CalendarTask Task(WorkTask task)
    {
        var time = times[task.Id];
        return new(task, Windows.At(time.Start), Windows.At(time.End), Windows.At(time.End + task.WaitMinutes));
    }

    private CalendarSetting Setting(ScheduledSetUp time)
    {
        var setting = problem.Work.Settings.First(s => s.Key == time.SetUp);
        return new(setting, Windows.At(time.Start), Windows.At(time.Start + setting.Minutes), Windows.At(time.End));
    }

    private CalendarGift Gift(GiftReady ready)
    {
        var due = problem.Request.FindGift(ready.Gift)?.Due;
        int? ended = problem.Schedule.Deliveries.FirstOrDefault(d => d.Id == ready.Gift)?.Last.Max(l => times[l.Task].End + l.WaitMinutes);
        int? dueAt = due is { } day ? Windows.MinuteOf(day) : null;
        // Definition: 1440 minutes a day.
        int? slack = dueAt - ended is { } minutes ? (int)Math.Floor(minutes / 1440.0) : null;
        return new(ready.Gift, due, dueAt is { } d ? Windows.At(d) : null, ended is { } e ? Windows.At(e) : null, slack);
    }

    private CalendarEvening Evening(ScheduleWindow window, CalendarTask[] tasks) => new(
        Windows.At(window.Start), Windows.At(window.End),
        [.. tasks.Select(t => t.Task.Id).Where(id => window.Holds(times[id].Start, times[id].End))]);
}
