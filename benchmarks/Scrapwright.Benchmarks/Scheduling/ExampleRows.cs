using System.Diagnostics;
using System.Globalization;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Building;
using Scrapwright.Core.Plans;
using Scrapwright.Files;
using Scrapwright.Planning;
using Scrapwright.Planning.Calendar;

namespace Scrapwright.Benchmarks.Scheduling;

/// <summary>The example workshop: its plan, made in this run, begun with time enough and begun too late, and made again after two evenings.</summary>
internal static class ExampleRows
{
    private static readonly (string What, string Start)[] Starts = [("time enough", "2027-05-01T00:00Z"), ("begun late", "2027-05-25T00:00Z")];

    internal static async Task RunAsync(double seconds, int workers, int seed, IProgress<ScheduleProgress>? steps)
    {
        var limits = new PlanLimits { Seconds = seconds, Workers = workers, Seed = seed };
        if (await Planner.PlanAsync(ExampleWorkshop.Request, new PlanLimits { Seconds = 5, Deterministic = true }) is not PlanOutcome.Planned { Plan: var plan })
        {
            Console.WriteLine("  example: no plan");
            return;
        }

        foreach (var (what, start) in Starts)
        {
            var request = new CalendarRequest { Plan = plan, Hours = ExampleWorkshop.Hours, HomeZone = TimeZoneInfo.Utc, Start = DateTimeOffset.Parse(start, CultureInfo.InvariantCulture) };
            if (await WriteAsync(what, request, limits, steps) is { } first) await WriteAsync($"{what}, after two evenings", After(request, first), limits, steps);
        }
    }

    private static string Changes(ScheduleProblem problem, ScheduleOutcome outcome) => outcome is ScheduleOutcome.Scheduled { Schedule: var schedule }
        ? $", another setting taken up {EveningOrder.Changes(new ScheduleFacts(problem), [.. schedule.Tasks.Select(t => t.Start)])} times within evenings"
        : "";

    private static CalendarRequest After(CalendarRequest request, WorkCalendar before) => request with
    {
        Start = before.Evenings[1].End.AddHours(1),
        Done = [.. before.Evenings[..2].SelectMany(e => e.Tasks).Select(id => new DoneTask(id, before.Tasks.First(t => t.Task.Id == id).End))],
        Before = before,
    };

    private static async Task<WorkCalendar?> WriteAsync(string what, CalendarRequest request, PlanLimits limits, IProgress<ScheduleProgress>? steps)
    {
        if (CalendarProblem.Make(request) is not CalendarMaking.Made { Problem: var problem }) return null;
        var clock = Stopwatch.StartNew();
        var outcome = await Scheduler.SolveAsync(problem.Schedule, limits, steps);
        ShopRows.Write($"example, {problem.Schedule.Tasks.Length} tasks, {what}", outcome, clock.Elapsed, Changes(problem.Schedule, outcome));
        return outcome is ScheduleOutcome.Scheduled { Schedule: var schedule } ? WorkCalendar.Of(problem, schedule) : null;
    }
}
