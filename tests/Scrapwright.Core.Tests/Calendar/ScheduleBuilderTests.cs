using System.Collections.Immutable;
using CsCheck;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Audit;

namespace Scrapwright.Core.Tests.Calendar;

public sealed class ScheduleBuilderTests
{
    [Fact]
    public void The_evening_shop_is_built_as_well_as_by_hand()
    {
        var schedule = Built(EveningShop.Problem);

        Assert.Empty(ScheduleAudit.Check(EveningShop.Problem, schedule));
        Assert.True(schedule.Levels[0].Value <= EveningShop.Schedule.Levels[0].Value);
        Assert.Equal(2, schedule.SetUps.Length);
    }

    [Fact]
    public void Tasks_of_one_setting_share_it()
    {
        var problem = EveningShop.Problem with { Tasks = [.. EveningShop.Problem.Tasks.Where(t => t.SetUp.Length > 0)], Links = [], Deliveries = [] };

        var schedule = Built(problem);

        Assert.Equal(["crosscut sled", "rip fence"], schedule.SetUps.Select(s => s.SetUp).Order());
    }

    [Fact]
    public void A_chain_with_a_limit_waits_for_a_window_that_holds_it()
    {
        // The oil would fit the end of the first window, its wiping would not.
        var problem = new ScheduleProblem
        {
            HorizonMinutes = 1000,
            Resources = [new ScheduleResource("maker", 1)],
            Tasks = [Hand("busy", 80), Hand("oil", 10), Hand("wipe", 5)],
            Links = [new ScheduleLink("busy", "oil"), new ScheduleLink("oil", "wipe", 15, 30)],
            Hours = [new ScheduleHours("evenings", [new ScheduleWindow(0, 100), new ScheduleWindow(500, 600)])],
        };

        Assert.Equal([0, 500, 525], Built(problem).Tasks.Select(t => t.Start));
    }

    [Fact]
    public void Moving_a_task_leaves_alone_what_still_holds()
    {
        var moved = Moved("crosscut", 100);

        Assert.Equal(EveningShop.Schedule.Tasks.SetItem(2, new ScheduledTask("crosscut", 100, 115)), moved.Tasks);
    }

    [Fact]
    public void Moving_a_task_takes_along_what_follows()
    {
        var moved = Moved("oil", 1500, EveningShop.Problem with { Tasks = [.. EveningShop.Problem.Tasks.Select(t => t with { FixedStart = null })] });

        // Wiping follows after 15 to 30 minutes; the glue that stood there goes to the next free place.
        Assert.Equal(new ScheduledTask("oil", 1500, 1510), moved.Tasks[5]);
        Assert.Equal(new ScheduledTask("wipe", 1525, 1530), moved.Tasks[6]);
        Assert.Equal(new ScheduledTask("glue more", 1530, 1550), moved.Tasks[4]);
        Assert.Equal(EveningShop.Schedule.Tasks[..4], moved.Tasks[..4]);
    }

    [Theory]
    [InlineData("rip", 1500)]
    [InlineData("rip", 2)]
    [InlineData("wipe", 1449)]
    [InlineData("glue more", 1590)]
    [InlineData("sand", 0)]
    public void A_move_that_cannot_be_has_a_reason(string task, int start)
    {
        var outcome = Assert.IsType<ScheduleOutcome.Impossible>(ScheduleBuilder.Move(EveningShop.Problem, EveningShop.Schedule, task, start));

        Assert.NotEmpty(outcome.Reasons);
        Assert.All(outcome.Reasons, r => Assert.True(r.Where.Length > 0 && r.Found.Length > 0 && r.Expected.Length > 0));
    }

    [Fact]
    public void Moving_any_task_to_any_later_start_holds_or_says_why() => Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[0, 3000]).Sample(
        (seed, later) =>
        {
            var problem = RandomProblems.Middling(seed);
            if (ScheduleBuilder.Build(problem) is not ScheduleOutcome.Scheduled { Schedule: var schedule }) return;
            var task = schedule.Tasks[seed % schedule.Tasks.Length];

            switch (ScheduleBuilder.Move(problem, schedule, task.Task, task.Start + later))
            {
                case ScheduleOutcome.Scheduled { Schedule: var moved }:
                    var fixedThere = problem with { Tasks = [.. problem.Tasks.Select(t => t.Id == task.Task ? t with { FixedStart = task.Start + later } : t)] };
                    Assert.Empty(ScheduleAudit.Check(fixedThere, moved));
                    Assert.Equal(task.Start + later, moved.Tasks.Single(t => t.Task == task.Task).Start);
                    if (later == 0) Assert.Equal(schedule.Tasks.AsEnumerable(), moved.Tasks);
                    break;
                case ScheduleOutcome.Impossible { Reasons: var reasons }:
                    Assert.NotEmpty(reasons);
                    break;
            }
        },
        iter: 300);

    [Fact]
    public void Moving_a_task_to_where_it_is_changes_nothing() => Gen.Int[0, 1_000_000].Sample(
        seed =>
        {
            var problem = RandomProblems.Middling(seed);
            if (ScheduleBuilder.Build(problem) is not ScheduleOutcome.Scheduled { Schedule: var schedule }) return;
            var task = schedule.Tasks[seed % schedule.Tasks.Length];

            Assert.Equal(schedule.Tasks.AsEnumerable(), Assert.IsType<ScheduleOutcome.Scheduled>(ScheduleBuilder.Move(problem, schedule, task.Task, task.Start)).Schedule.Tasks);
        },
        iter: 200);

    [Fact]
    public void The_same_order_gives_the_same_schedule_and_longer_tasks_hold() => Gen.Int[0, 1_000_000].Sample(
        seed =>
        {
            var problem = RandomProblems.Middling(seed) with { HorizonMinutes = 60_000 };
            if (ScheduleBuilder.Build(problem) is not ScheduleOutcome.Scheduled { Schedule: var schedule }) return;
            ImmutableArray<string> order = [.. schedule.Tasks.OrderBy(t => t.Start).Select(t => t.Task)];
            var longer = problem with { Tasks = [.. problem.Tasks.Select(t => t with { Minutes = t.Minutes + (t.Minutes / 4) })] };

            Assert.Equal(ScheduleBuilder.InOrder(problem, order) is ScheduleOutcome.Scheduled one ? one.Schedule.Tasks : [], ScheduleBuilder.InOrder(problem, order) is ScheduleOutcome.Scheduled two ? two.Schedule.Tasks : []);
            if (ScheduleBuilder.InOrder(longer, order) is ScheduleOutcome.Scheduled later) Assert.Empty(ScheduleAudit.Check(longer, later.Schedule));
        },
        iter: 100);

    [Fact]
    public void Impossible_says_what_is_too_long_and_what_is_too_much()
    {
        var tooLong = EveningShop.Problem with { Tasks = EveningShop.Problem.Tasks.SetItem(1, EveningShop.Problem.Tasks[1] with { Minutes = 156 }) };
        var tooMuch = EveningShop.Problem with { Tasks = [.. EveningShop.Problem.Tasks, Hand("sand", 100), Hand("sand more", 100)] };

        Assert.Equal([new ScheduleReason("rip more", "161 min with setting up", "at most 160 min, the longest stretch of 'evenings'")], Assert.IsType<ScheduleOutcome.Impossible>(ScheduleBuilder.Build(tooLong)).Reasons);

        // 20 + 10 + 15 + 20 + 20 + 10 + 5 + 100 + 100 and 13 for the settings; the evenings have 120 + 160.
        Assert.Contains(new ScheduleReason("maker", "280 min of hours until the horizon", "313 min for all tasks and settings"), Assert.IsType<ScheduleOutcome.Impossible>(ScheduleBuilder.Build(tooMuch)).Reasons);
    }

    private static ScheduleTask Hand(string id, int minutes) => new() { Id = id, Minutes = minutes, Hours = "evenings", Needs = [new ScheduleNeed("maker", 1)] };

    private static Schedule Built(ScheduleProblem problem) => Assert.IsType<ScheduleOutcome.Scheduled>(ScheduleBuilder.Build(problem)).Schedule;

    private static Schedule Moved(string task, int start, ScheduleProblem? problem = null)
    {
        problem ??= EveningShop.Problem;
        var moved = Assert.IsType<ScheduleOutcome.Scheduled>(ScheduleBuilder.Move(problem, EveningShop.Schedule, task, start)).Schedule;
        Assert.Empty(ScheduleAudit.Check(problem, moved));
        return moved;
    }
}
