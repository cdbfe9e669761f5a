using System.Collections.Immutable;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Worth;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Calendar.Advice;

/// <summary>A problem in which there is a jig more: the work it serves is quicker, and waits for it.</summary>
internal static class JigWork
{
    /// <summary>The problem in which it is made first, an evening's share at a time.</summary>
    /// <returns>The problem; null when it serves nothing, or there are no hours to make it in.</returns>
    internal static CalendarProblem? Made(CalendarProblem problem, Jig jig)
    {
        var hours = problem.Schedule.Hours.FirstOrDefault(h => h.Key == Hours)?.Windows ?? problem.Windows.All;
        if (hours.IsEmpty) return null;
        var parts = (int)Math.Ceiling(jig.MakeMinutes / (double)hours.Max(w => w.Minutes));
        ImmutableArray<ScheduleTask> making =
        [
            .. Enumerable.Range(0, parts).Select(i => new ScheduleTask
            {
                Id = $"make/{jig.Key}#{i + 1}",
                Minutes = (jig.MakeMinutes * (i + 1) / parts) - (jig.MakeMinutes * i / parts),
                Needs = [new(CalendarProblem.Maker, 1)],
                Hours = Hours,
            }),
        ];
        ImmutableArray<ScheduleLink> order = [.. Enumerable.Range(1, parts - 1).Select(i => new ScheduleLink(making[i - 1].Id, making[i].Id))];
        var served = With(problem, jig, making, order);
        return served is null || problem.Schedule.Hours.Any(h => h.Key == Hours) ? served : served with { Schedule = served.Schedule with { Hours = served.Schedule.Hours.Add(new(Hours, hours)) } };
    }

    /// <summary>The problem in which it comes on a day.</summary>
    /// <returns>The problem; null when it serves nothing, or comes after the horizon.</returns>
    internal static CalendarProblem? Bought(CalendarProblem problem, Jig jig, DateOnly day) => BoughtWork.Arrival(problem, day) is { } arrival
        ? With(problem, jig, [new() { Id = $"bought/{jig.Key}", Minutes = 0, FixedStart = arrival }], [])
        : null;

    // Key of the shop's hours where no machine runs; see WorkTask.Hours.
    private const string Hours = "shop";

    private static CalendarProblem? With(CalendarProblem problem, Jig jig, ImmutableArray<ScheduleTask> first, ImmutableArray<ScheduleLink> order)
    {
        var saved = problem.Work.Tasks.Where(t => JigSaving.Serves(jig, t)).ToDictionary(t => t.Id, t => JigSaving.Seconds(jig, t), StringComparer.Ordinal);
        var settings = problem.Work.Settings.ToDictionary(s => s.Key, s => JigSaving.SetUpSeconds(jig, s), StringComparer.Ordinal);
        var schedule = problem.Schedule;
        var served = schedule.Tasks.Where(t => saved.ContainsKey(t.Id)).Select(t => t.Id).ToArray();
        if (served.Length == 0) return null;
        return problem with
        {
            Schedule = schedule with
            {
                // What is left is rounded up to whole minutes: 60 seconds a minute, by definition.
                Tasks = [.. schedule.Tasks.Select(t => saved.TryGetValue(t.Id, out var seconds) ? t with { Minutes = Math.Max(1, t.Minutes - (seconds / 60)) } : t), .. first],
                Links = [.. schedule.Links, .. order, .. served.Select(task => new ScheduleLink(first[^1].Id, task))],
                SetUps = [.. schedule.SetUps.Select(s => s with { Minutes = s.Minutes - (settings.GetValueOrDefault(s.Key) / 60) })],
            },
        };
    }
}
