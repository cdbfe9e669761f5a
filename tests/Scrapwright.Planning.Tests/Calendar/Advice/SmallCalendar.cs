using Scrapwright.Core.Calendar;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Tests.Calendar.Advice;

/// <summary>Tasks one after the other for one gift, from six o'clock in the evening of Monday 3 May 2027, by hand.</summary>
internal static class SmallCalendar
{
    /// <summary>The calendar.</summary>
    /// <param name="tasks">Least, planned and most minutes of each.</param>
    /// <param name="windows">Hours; empty for none.</param>
    /// <param name="due">Minute at which the gift is due.</param>
    internal static WorkCalendar Of((int Least, int Likely, int Most)[] tasks, ScheduleWindow[] windows, int? due)
    {
        var problem = new ScheduleProblem
        {
            HorizonMinutes = 100_000,
            Resources = [new("maker", 1)],
            Tasks = [.. tasks.Select((t, i) => new ScheduleTask { Id = $"t{i}", Minutes = t.Likely, Needs = [new("maker", 1)], Hours = windows.Length > 0 ? "shop" : "" })],
            Links = [.. Enumerable.Range(1, tasks.Length - 1).Select(i => new ScheduleLink($"t{i - 1}", $"t{i}"))],
            Hours = windows.Length > 0 ? [new("shop", [.. windows])] : [],
            Deliveries = [new("tray", [new($"t{tasks.Length - 1}")], due, 1)],
        };
        var schedule = Xunit.Assert.IsType<ScheduleOutcome.Scheduled>(ScheduleBuilder.Build(problem)).Schedule;
        var start = DateTimeOffset.Parse("2027-05-03T18:00Z", System.Globalization.CultureInfo.InvariantCulture);
        DateOnly? day = due is { } d ? DateOnly.FromDateTime(start.AddMinutes(d).DateTime) : null;
        return new()
        {
            Fingerprint = "",
            Start = start,
            TimeZone = "UTC",
            Hours = new(),
            Problem = problem,
            Schedule = schedule,
            Tasks = [.. schedule.Tasks.Select((t, i) => new CalendarTask(Work(t.Task, tasks[i]), start.AddMinutes(t.Start), start.AddMinutes(t.End), start.AddMinutes(t.End)))],
            Settings = [],
            Gifts = [new("tray", day, due is { } at ? start.AddMinutes(at) : null, start.AddMinutes(schedule.Tasks[^1].End), null)],
            Evenings = [],
        };
    }

    private static WorkTask Work(string id, (int Least, int Likely, int Most) minutes) => new()
    {
        Id = id,
        Title = id,
        Operation = Operation.Rip,
        Station = Station.TableSaw,
        Gifts = ["tray"],
        Steps = [1],
        Pieces = [],
        Minutes = minutes.Likely,
        LeastMinutes = minutes.Least,
        MostMinutes = minutes.Most,
        Setting = "",
    };
}
