using System.Collections.Immutable;
using CsCheck;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Audit;

namespace Scrapwright.Core.Tests.Calendar;

public sealed class ScheduleAuditTests
{
    [Fact]
    public void A_schedule_by_hand_holds() => Assert.Empty(ScheduleAudit.Check(EveningShop.Problem, EveningShop.Schedule));

    public static TheoryData<string, string, int, int> Moves => new()
    {
        { "task rip, start", "rip", 4, 24 },
        { "task rip, minutes", "rip", 5, 24 },
        { "task glue more, fixed start", "glue more", 1501, 1521 },
        { "task glue, hours", "glue", 110, 130 },
        { "task glue, hours", "glue", 700, 720 },
        { "task wipe", "wipe", -5, 0 },
        { "task wipe", "wipe", 2999, 3004 },
        { "link rip to crosscut", "crosscut", 8, 23 },
        { "link glue to oil", "oil", 95, 105 },
        { "link oil to wipe", "wipe", 1460, 1465 },
        { "link oil to wipe", "wipe", 1490, 1495 },
        { "task rip more, setting", "rip more", 60, 70 },
        { "setting rip fence at 0, end", "rip more", 24, 34 },
        { "task crosscut, setting", "crosscut", 40, 55 },
        { "resource maker at 57", "glue", 57, 77 },
        { "resource saw at 24", "rip more", 24, 34 },
        { "resource maker at 37", "glue", 37, 57 },
        { "level Lateness of priority 1, value", "wipe", 1580, 1585 },
    };

    [Theory]
    [MemberData(nameof(Moves))]
    public void A_task_that_is_moved_is_found(string where, string task, int start, int end)
    {
        var schedule = EveningShop.Schedule;
        var moved = schedule with { Tasks = [.. schedule.Tasks.Select(t => t.Task == task ? new ScheduledTask(task, start, end) : t)] };

        // Where the setting's end or the links would be told first and alone, the case says so by its name.
        Assert.Contains(Found(EveningShop.Problem, task == "rip more" && start == 24 && where.StartsWith("resource", StringComparison.Ordinal) ? WithEnd(moved) : moved), w => w == where);
    }

    public static TheoryData<string, int, string> SetUpChanges => new()
    {
        { "setting rip fence at -1", -1, "rip fence" },
        { "task rip, setting", 1, "rip fence" },
        { "station saw", 34, "crosscut sled" },
        { "task crosscut, setting", 36, "crosscut sled" },
    };

    [Theory]
    [MemberData(nameof(SetUpChanges))]
    public void A_setting_that_is_moved_is_found(string where, int start, string key)
    {
        var schedule = EveningShop.Schedule;

        Assert.Contains(Found(EveningShop.Problem, schedule with { SetUps = [.. schedule.SetUps.Select(s => s.SetUp == key ? s with { Start = start } : s)] }), w => w == where);
    }

    [Fact]
    public void Settings_that_are_left_out_doubled_idle_or_unknown_are_found()
    {
        var schedule = EveningShop.Schedule;

        Assert.Contains("task crosscut, setting", Found(EveningShop.Problem, schedule with { SetUps = schedule.SetUps[..1] }));
        Assert.Contains("settings, order", Found(EveningShop.Problem, schedule with { SetUps = [schedule.SetUps[1], schedule.SetUps[0]] }));
        Assert.Contains("settings", Found(EveningShop.Problem, schedule with { SetUps = schedule.SetUps.Add(new ScheduledSetUp("other", 70, 80)) }));
        Assert.Contains("setting rip fence at 1440", Found(EveningShop.Problem, schedule with { SetUps = schedule.SetUps.Add(new ScheduledSetUp("rip fence", 1440, 1450)) }));
    }

    [Fact]
    public void A_setting_that_is_set_up_twice_in_a_window_is_found()
    {
        var schedule = EveningShop.Schedule;
        var twice = schedule with
        {
            Tasks = schedule.Tasks.SetItem(1, new ScheduledTask("rip more", 90, 100)),
            SetUps = [new ScheduledSetUp("rip fence", 0, 25), schedule.SetUps[1], new ScheduledSetUp("rip fence", 85, 100)],
        };

        Assert.Contains("setting rip fence at 0", Found(EveningShop.Problem, twice));
    }

    [Fact]
    public void A_setting_that_stands_from_one_window_to_another_is_found()
    {
        var problem = EveningShop.Problem with { Hours = [new ScheduleHours("evenings", [new ScheduleWindow(0, 25), new ScheduleWindow(25, 120), new ScheduleWindow(1440, 1600)])] };

        Assert.Contains("setting rip fence at 0", Found(problem, EveningShop.Schedule));
    }

    [Fact]
    public void Clamps_that_are_held_are_taken()
    {
        var problem = EveningShop.Problem with { Tasks = [.. EveningShop.Problem.Tasks.Select(t => t.Id == "glue more" ? t with { FixedStart = null } : t)] };
        var schedule = EveningShop.Schedule with { Tasks = EveningShop.Schedule.Tasks.SetItem(4, new ScheduledTask("glue more", 90, 110)) };

        Assert.Equal(["resource clamps at 90"], Found(problem, schedule));
    }

    [Fact]
    public void What_is_held_and_what_waits_ends_before_the_horizon()
    {
        Assert.Contains("delivery stand", Found(EveningShop.Problem with { HorizonMinutes = 2199 }, EveningShop.Schedule));
        Assert.Contains("task glue more, clamps", Found(EveningShop.Problem with { HorizonMinutes = 1579 }, EveningShop.Schedule));
    }

    [Fact]
    public void Tasks_that_are_left_out_doubled_or_in_another_order_are_found()
    {
        var tasks = EveningShop.Schedule.Tasks;

        foreach (var some in new ImmutableArray<ScheduledTask>[] { tasks[1..], tasks.Add(tasks[0]), [tasks[1], tasks[0], .. tasks[2..]] })
        {
            Assert.Equal(["tasks"], Found(EveningShop.Problem, EveningShop.Schedule with { Tasks = some }));
        }
    }

    [Fact]
    public void Levels_are_worked_out_again()
    {
        var schedule = EveningShop.Schedule;
        for (var i = 0; i < schedule.Levels.Length; i++)
        {
            var level = schedule.Levels[i];
            Assert.Single(Found(EveningShop.Problem, schedule with { Levels = schedule.Levels.SetItem(i, level with { Value = level.Value + 1 }) }));
            Assert.Single(Found(EveningShop.Problem, schedule with { Levels = schedule.Levels.SetItem(i, level with { Bound = level.Value + 1 }) }));
            Assert.Equal(["levels"], Found(EveningShop.Problem, schedule with { Levels = schedule.Levels.RemoveAt(i) }));
        }
    }

    [Fact]
    public void A_problem_with_faults_has_no_schedule() =>
        Assert.Contains("problem, horizon", Found(EveningShop.Problem with { HorizonMinutes = 0 }, EveningShop.Schedule));

    [Fact]
    public void Whatever_is_built_holds_and_a_minute_less_of_any_task_does_not() => Gen.Int[0, 1_000_000].Sample(
        seed =>
        {
            var problem = RandomProblems.Middling(seed);
            if (ScheduleBuilder.Build(problem) is not ScheduleOutcome.Scheduled { Schedule: var schedule }) return;

            Assert.Empty(ScheduleAudit.Check(problem, schedule));
            var at = seed % schedule.Tasks.Length;
            Assert.NotEmpty(ScheduleAudit.Check(problem, schedule with { Tasks = schedule.Tasks.SetItem(at, schedule.Tasks[at] with { End = schedule.Tasks[at].End - 1 }) }));
        },
        iter: 300);

    private static Schedule WithEnd(Schedule schedule) => schedule with { SetUps = schedule.SetUps.SetItem(0, schedule.SetUps[0] with { End = 34 }) };

    private static string[] Found(ScheduleProblem problem, Schedule schedule) => [.. ScheduleAudit.Check(problem, schedule).Select(f => f.Where)];
}
