using System.Collections.Immutable;
using Scrapwright.Core.Calendar;

namespace Scrapwright.Core.Tests.Calendar;

/// <summary>Puts tasks into time one after the other, as early as their hours, their settings and those before them allow: a schedule as a patient person writes it.</summary>
internal static class CalendarBench
{
    public static WorkCalendar Calendar(CalendarProblem problem) => WorkCalendar.Of(problem, Schedule(problem.Schedule));

    public static Schedule Schedule(ScheduleProblem problem)
    {
        var done = new Dictionary<string, ScheduledTask>();
        var settings = new List<ScheduledSetUp>();
        var now = 0;
        while (done.Count < problem.Tasks.Length)
        {
            // Of those whose turn it is the one that may begin first: so oil is wiped before anything else is taken in hand.
            var task = problem.Tasks.Where(t => !done.ContainsKey(t.Id) && problem.Links.Where(l => l.After == t.Id).All(l => done.ContainsKey(l.Before))).MinBy(Earliest)!;
            var setUp = problem.SetUps.SingleOrDefault(s => s.Key == task.SetUp);
            var isSet = settings.Count > 0 && settings[^1].SetUp == task.SetUp && problem.Hours.Single(h => h.Key == "shop").Windows.Any(w => w.Holds(settings[^1].Start, Earliest(task) + task.Minutes));
            var before = setUp is null || isSet ? 0 : setUp.Minutes;
            var start = task.FixedStart ?? FirstFit(problem, task, Math.Max(now, Earliest(task) - before), before) + before;
            if (setUp is not null && isSet) settings[^1] = settings[^1] with { End = start + task.Minutes };
            else if (setUp is not null) settings.Add(new(task.SetUp, start - before, start + task.Minutes));
            done[task.Id] = new(task.Id, start, start + task.Minutes);
            now = Math.Max(now, start + task.Minutes);
        }

        return new() { Tasks = [.. problem.Tasks.Select(t => done[t.Id])], SetUps = [.. settings] };

        int Earliest(ScheduleTask task) => problem.Links.Where(l => l.After == task.Id).Select(l => done[l.Before].End + l.LeastMinutes).Append(Math.Max(now, task.EarliestStart)).Max();
    }

    private static int FirstFit(ScheduleProblem problem, ScheduleTask task, int from, int before)
    {
        if (task.Hours.Length == 0) return from;
        return problem.Hours.Single(h => h.Key == task.Hours).Windows
            .Where(w => Math.Max(from, w.Start) + before + task.Minutes <= w.End).Select(w => Math.Max(from, w.Start)).First();
    }
}
