using System.Collections.Immutable;
using CsCheck;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Audit;
using Scrapwright.Core.Tests.Calendar;
using Scrapwright.Planning.Calendar;

namespace Scrapwright.Planning.Tests.Calendar;

public sealed class SchedulerTests
{
    private static readonly PlanLimits Quick = new() { Seconds = 20, Deterministic = true };

    [Fact]
    public void The_solver_finds_what_trying_everything_finds() => Gen.Int[0, 1_000_000].Sample(
        seed =>
        {
            var problem = RandomProblems.Tiny(seed);
            var best = TryEverything.Best(problem);

            switch (Solve(problem))
            {
                case ScheduleOutcome.Scheduled { Schedule: var schedule }:
                    Assert.NotNull(best);
                    Assert.Equal(best, schedule.Levels.Select(l => l.Value));
                    Assert.All(schedule.Levels, l => Assert.True(l.IsProven, $"{l.Kind}: {l.Value}, bound {l.Bound}"));
                    break;
                case ScheduleOutcome.Impossible { Reasons: var reasons }:
                    Assert.Null(best);
                    Assert.NotEmpty(reasons);
                    break;
                default:
                    Assert.Fail("unfinished");
                    break;
            }
        },
        iter: 100, threads: 1);

    [Fact]
    public void What_is_built_at_once_is_never_better_than_trying_everything() => Gen.Int[0, 1_000_000].Sample(
        seed =>
        {
            var problem = RandomProblems.Tiny(seed);
            if (ScheduleBuilder.Build(problem) is not ScheduleOutcome.Scheduled { Schedule: var schedule }) return;
            var best = TryEverything.Best(problem);

            Assert.NotNull(best);
            Assert.True(schedule.Levels.Select(l => l.Value).ToArray().AsSpan().SequenceCompareTo(best) >= 0);
            Assert.Empty(ScheduleAudit.Check(problem, schedule));

            // Bounds that need no search hold for the best, whatever its other levels.
            Assert.All(schedule.Levels.Zip(best), pair => Assert.True(pair.First.Bound <= pair.Second));
        },
        iter: 100, threads: 1);

    [Fact]
    public void The_solver_is_never_worse_than_what_is_built_at_once() => Gen.Int[0, 1_000_000].Sample(
        seed =>
        {
            var problem = RandomProblems.Middling(seed);
            if (ScheduleBuilder.Build(problem) is not ScheduleOutcome.Scheduled { Schedule: var built }) return;

            var schedule = Assert.IsType<ScheduleOutcome.Scheduled>(Solve(problem, 0.5)).Schedule;

            Assert.Empty(ScheduleAudit.Check(problem, schedule));
            Assert.True(schedule.Levels.Select(l => l.Value).ToArray().AsSpan().SequenceCompareTo(built.Levels.Select(l => l.Value).ToArray()) <= 0);
        },
        iter: 10, threads: 1);

    [Fact]
    public void Longer_windows_never_make_it_later() => Gen.Int[0, 1_000_000].Sample(
        seed =>
        {
            var problem = Undated(seed);
            var longer = problem with { Hours = [.. problem.Hours.Select(h => h with { Windows = [.. h.Windows.Select(w => w with { End = w.End + 1 })] })] };

            if (Ready(problem) is { } ready) Assert.True(Ready(longer) <= ready);
        },
        iter: 40, threads: 1);

    [Fact]
    public void One_more_task_never_makes_it_earlier() => Gen.Int[0, 1_000_000].Sample(
        seed =>
        {
            var problem = Undated(seed);
            var more = problem with { Tasks = problem.Tasks.Add(new ScheduleTask { Id = "more", Minutes = 1 + (seed % 3), Hours = "all", Needs = [new ScheduleNeed("maker", 1)] }) };

            if (Ready(more) is { } ready) Assert.True(Ready(problem) <= ready);
        },
        iter: 40, threads: 1);

    // PSPLIB, j30 set, instance j301_1 (Kolisch and Sprecher, 1997): minutes, needs and followers carried over; optimum 43 (j30opt.sm, after Demeulemeester and Herroelen, 1995).
    [Fact]
    public void The_first_published_instance_is_solved_to_its_optimum()
    {
        var level = Assert.IsType<ScheduleOutcome.Scheduled>(Solve(PublishedInstance.Problem)).Schedule.Levels.Single();

        Assert.Equal((ScheduleLevelKind.AllReady, 43, 43), (level.Kind, level.Value, level.Bound));
    }

    // Its header: MPM-Time 38.
    [Fact]
    public void The_first_published_instance_has_the_published_critical_path() => Assert.Equal(38, CriticalPath.LengthMinutes(PublishedInstance.Problem));

    [Fact]
    public void The_same_problem_and_seed_give_the_same_schedule()
    {
        var problem = RandomProblems.Middling(17);

        Assert.Equal(Tasks(Solve(problem, 0.5)), Tasks(Solve(problem, 0.5)));

        static ImmutableArray<ScheduledTask> Tasks(ScheduleOutcome outcome) => Assert.IsType<ScheduleOutcome.Scheduled>(outcome).Schedule.Tasks;
    }

    [Fact]
    public void Faults_and_what_cannot_be_come_with_reasons()
    {
        var circle = EveningShop.Problem with { Links = [new ScheduleLink("oil", "wipe"), new ScheduleLink("wipe", "oil")] };
        var tooLong = EveningShop.Problem with { Tasks = EveningShop.Problem.Tasks.SetItem(1, EveningShop.Problem.Tasks[1] with { Minutes = 156 }) };

        Assert.Equal("oil", Assert.IsType<ScheduleOutcome.Impossible>(Solve(circle)).Reasons.Single().Where);
        Assert.Equal("rip more", Assert.IsType<ScheduleOutcome.Impossible>(Solve(tooLong)).Reasons.Single().Where);
    }

    [Fact]
    public async Task Steps_are_told_and_audited()
    {
        var steps = new List<ScheduleProgress>();

        var outcome = await Scheduler.SolveAsync(EveningShop.Problem, Quick, new Listener(steps));

        var schedule = Assert.IsType<ScheduleOutcome.Scheduled>(outcome).Schedule;
        Assert.NotEmpty(steps);
        Assert.All(steps.Where(s => s.Best is not null), s => Assert.Empty(ScheduleAudit.Check(EveningShop.Problem, s.Best!)));
        Assert.Equal(schedule.Tasks.AsEnumerable(), steps.Last(s => s.Best is not null).Best!.Tasks);
    }

    [Fact]
    public async Task A_search_that_is_cancelled_at_once_gives_what_was_built()
    {
        var outcome = await Scheduler.SolveAsync(EveningShop.Problem, Quick, null, new CancellationToken(canceled: true));

        Assert.IsType<ScheduleOutcome.Scheduled>(outcome);
    }

    [Fact]
    public void A_schedule_that_the_audit_rejects_is_never_given() =>
        Assert.Throws<InvalidOperationException>(() => Scheduler.Audited(EveningShop.Problem, EveningShop.Schedule with { SetUps = [] }));

    private static ScheduleProblem Undated(int seed) => RandomProblems.Tiny(seed) with { Deliveries = [], Before = [], HorizonMinutes = 18 };

    private static long? Ready(ScheduleProblem problem) => Solve(problem) is ScheduleOutcome.Scheduled { Schedule.Levels: [{ IsProven: true } ready, ..] } ? ready.Value : null;

    private static ScheduleOutcome Solve(ScheduleProblem problem, double seconds = 20) => Scheduler.SolveAsync(problem, Quick with { Seconds = seconds }).GetAwaiter().GetResult();

    private sealed class Listener(List<ScheduleProgress> steps) : IProgress<ScheduleProgress>
    {
        public void Report(ScheduleProgress value) => steps.Add(value);
    }
}
