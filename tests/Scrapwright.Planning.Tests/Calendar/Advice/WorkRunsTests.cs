using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Audit;
using Scrapwright.Planning.Calendar.Advice;

namespace Scrapwright.Planning.Tests.Calendar.Advice;

/// <summary>Runs through the work of a plan that the planner really made.</summary>
public sealed class WorkRunsTests(ExampleCalendars example) : IClassFixture<ExampleCalendars>
{
    private readonly WorkCalendar calendar = example.Early;

    // The audit knows nothing of runs: each has to be a schedule of the problem with its own minutes.
    [Fact]
    public void Every_run_is_a_schedule_that_the_audit_accepts()
    {
        var work = calendar.Tasks.ToDictionary(t => t.Task.Id, t => t.Task with { LeastWaitMinutes = null });
        var runs = new WorkRuns(calendar.Problem, calendar.Schedule, work, new ChanceRules());
        for (var run = WorkRuns.AsPlanned; run < 40; run++)
        {
            runs.Run(run);
            var problem = calendar.Problem with { Tasks = [.. calendar.Problem.Tasks.Select((t, i) => t with { Minutes = runs.Minutes[i] })] };
            var schedule = new Schedule
            {
                Tasks = [.. problem.Tasks.Select((t, i) => new ScheduledTask(t.Id, runs.Bench.Start[i], runs.Bench.Start[i] + t.Minutes))],
                SetUps = [.. runs.Bench.SetUps.Select(s => new ScheduledSetUp(problem.SetUps[s.SetUp].Key, s.Start, s.End)).OrderBy(s => s.Start).ThenBy(s => s.SetUp, StringComparer.Ordinal)],
            };

            // Levels are not stated here: all other findings count.
            Assert.DoesNotContain(ScheduleAudit.Check(problem, schedule), f => !f.Where.StartsWith("level", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void With_planned_minutes_every_gift_is_ready_as_in_the_calendar()
    {
        var runs = new WorkRuns(calendar.Problem, calendar.Schedule, calendar.Tasks.ToDictionary(t => t.Task.Id, t => t.Task), new ChanceRules());

        runs.Run(WorkRuns.AsPlanned);

        // A setting is set up just before its first task, not when the calendar says: that moves a gift by minutes, by less than an hour, our own limit.
        Assert.All(calendar.Problem.Deliveries.Index(), d => Assert.True(
            calendar.Start.AddMinutes(runs.Ready[d.Index]) < calendar.Gifts.Single(g => g.Gift == d.Item.Id).ReadyAt!.Value.AddHours(1)));
    }

    [Fact]
    public void The_example_has_a_chance_for_every_gift_and_an_evening_to_start()
    {
        var chance = CalendarChances.Of(calendar, new ChanceRules { Runs = 400, StartRuns = 100 });

        Assert.Equal(calendar.Gifts.Select(g => g.Gift), chance.Gifts.Select(g => g.Gift));
        Assert.All(chance.Gifts, g => Assert.InRange(g.PerMille!.Value, chance.All.PerMille!.Value, 1000));
        Assert.All(chance.Gifts, g => Assert.True(g.SafeStartBy is null || g.SafeStartBy <= g.StartBy));
        Assert.All(chance.Gifts, g => Assert.True(g.StartBy < calendar.Gifts.Single(c => c.Gift == g.Gift).DueAt));
        Assert.True(chance.All.ReadyBy >= chance.Gifts.Max(g => g.ReadyBy));
    }
}
