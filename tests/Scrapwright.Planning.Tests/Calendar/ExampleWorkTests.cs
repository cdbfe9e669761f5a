using Scrapwright.Core.Calendar;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;
using Scrapwright.Files;

namespace Scrapwright.Planning.Tests.Calendar;

/// <summary>The work of a plan that the planner really made, as tasks and as a problem of fitting them into time.</summary>
public sealed class ExampleWorkTests(ExampleWorkTests.Example example) : IClassFixture<ExampleWorkTests.Example>
{
    private readonly Plan plan = example.Plan;
    private readonly CalendarProblem problem = Problem(example.Plan);

    private WorkTasks Work => problem.Work;

    private Shop Shop => plan.Request.Shop;

    [Fact]
    public void Every_task_has_a_station_that_is_set_for_it_and_minutes()
    {
        var settings = Work.Settings.ToDictionary(s => s.Key);

        Assert.NotEmpty(Work.Tasks);
        Assert.All(Work.Tasks.Where(t => !t.Id.EndsWith("/after", StringComparison.Ordinal)), t => Assert.Equal((t.Station, t.Operation), (settings[t.Setting].Station, settings[t.Setting].Operation)));
        Assert.All(Work.Tasks, t => Assert.InRange(t.Minutes, 1, 90));
        Assert.Equal(Work.Tasks.Length, Work.Tasks.Select(t => t.Id).Distinct().Count());
        Assert.All(Work.Tasks, t => Assert.NotEmpty(t.Gifts));
    }

    [Fact]
    public void Works_of_a_step_are_one_task_for_each_set_of_gifts()
    {
        // From the plan's steps alone: where each piece of each work ends up.
        var ends = plan.Made.SelectMany(m => m.Parts.Select(p => (p.Piece, m.Gift))).GroupBy(p => p.Piece).ToDictionary(g => g.Key, g => g.Select(p => p.Gift).ToHashSet());
        foreach (var step in plan.Steps.Reverse())
        {
            foreach (var work in step.Works)
            {
                var gifts = work.Out.SelectMany(o => ends.GetValueOrDefault(o.Id) ?? []).ToHashSet();
                var tasks = Work.Tasks.Where(t => t.Steps.Contains(step.Number) && work.In.All(t.Pieces.Contains)).ToArray();
                Assert.All(tasks, t => Assert.Equal(gifts.Order(), t.Gifts.Order()));
                Assert.True(tasks.Length == 1 || step.Operation == Operation.Finish, $"step {step.Number}");
                foreach (var piece in work.In) ends[piece] = gifts;
            }
        }
    }

    [Fact]
    public void Links_never_go_in_a_circle_and_hold_every_piece()
    {
        var place = Work.Tasks.Select((t, i) => (t.Id, i)).ToDictionary(t => t.Id, t => t.i);
        Assert.All(Work.Links, l => Assert.True(place[l.Before] < place[l.After]));

        var last = new Dictionary<string, int>();
        foreach (var step in plan.Steps)
        {
            foreach (var piece in step.Works.SelectMany(w => w.In).Where(last.ContainsKey))
            {
                var after = Work.Tasks.First(t => t.Steps.Contains(step.Number) && t.Pieces.Contains(piece)).Id;
                Assert.Contains(Work.Links, l => l.After == after && Work.Tasks[place[l.Before]].Steps.Contains(last[piece]));
            }

            foreach (var piece in step.Works.SelectMany(w => w.Out)) last[piece.Id] = step.Number;
        }
    }

    [Fact]
    public void All_in_all_it_takes_about_what_the_plan_says()
    {
        var inPlan = plan.Steps.Sum(s => s.HandsOnMinutes);
        var inTasks = Work.Tasks.Sum(t => t.Minutes) + plan.Steps.Sum(s => Shop.Times.First(t => t.Operation == s.Operation).SetUpMinutes);

        // Cuts, passes, clamps and area move it, rounding up adds a little for each task.
        Assert.InRange(inTasks, inPlan * 0.75, inPlan * 1.25);
    }

    [Fact]
    public void Every_gift_made_is_delivered_before_the_open_day()
    {
        // Noon of the third of May until the beginning of the nineteenth of June: 46.5 days.
        Assert.Equal(plan.Made.Select(m => m.Gift), problem.Schedule.Deliveries.Select(d => d.Id));
        Assert.All(problem.Schedule.Deliveries, d => Assert.Equal((46 * 1440) + 720, d.Due));
        Assert.All(problem.Schedule.Deliveries, d => Assert.NotEmpty(d.Last));
        Assert.All(Work.Gifts, g => Assert.All(g.Last, l => Assert.Contains(g.Gift, Work.Tasks.Single(t => t.Id == l.Task).Gifts)));
    }

    [Fact]
    public void A_stand_is_fitted_when_what_it_holds_is_cut()
    {
        var fit = Work.Tasks.Single(t => t.Operation == Operation.DryFit && t.Gifts.Contains("seed-stand"));

        Assert.Contains(Work.Links, l => l.After == fit.Id && l.Before.StartsWith("crosscut-blanks/", StringComparison.Ordinal) && Work.Tasks.Single(t => t.Id == l.Before).Gifts.Contains("seed-squares"));
    }

    [Fact]
    public void What_was_glued_is_gone_from_the_calendar_and_the_rest_keeps_its_names()
    {
        var glueUp = plan.GlueUps[0];
        var after = Problem(plan with { Request = plan.Request with { Choices = DoneMarks.Glue(plan, glueUp.Id) } }).Work;

        Assert.DoesNotContain(after.Tasks, t => t.Id == $"glue-up/{glueUp.Id}");
        Assert.Contains(after.Tasks, t => t.Operation == Operation.FlattenPanel && t.Gifts.Contains(glueUp.Gift));
        var strips = glueUp.Strips.Select(s => s.Piece).ToHashSet();
        Assert.DoesNotContain(after.Tasks, t => t.Operation < Operation.GlueUp && t.Pieces.Any(strips.Contains) && t.Pieces.Length == 1);
        var kept = after.Tasks.Select(t => t.Id).Intersect(Work.Tasks.Select(t => t.Id)).Count();
        Assert.True(kept >= after.Tasks.Length * 9 / 10, $"{kept} of {after.Tasks.Length}");
    }

    private static CalendarProblem Problem(Plan plan) => Assert.IsType<CalendarMaking.Made>(CalendarProblem.Make(new CalendarRequest
    {
        Plan = plan,
        Hours = ExampleWorkshop.Hours,
        HomeZone = TimeZoneInfo.Utc,
        Start = DateTimeOffset.Parse("2027-05-03T12:00Z"),
        Days = 120,
    })).Problem;

    /// <summary>The plan, made once for all of these tests.</summary>
    public sealed class Example : IAsyncLifetime
    {
        public Plan Plan { get; private set; } = null!;

        public async ValueTask InitializeAsync() =>
            Plan = Assert.IsType<PlanOutcome.Planned>(await Planner.PlanAsync(ExampleWorkshop.Request, new PlanLimits { Seconds = 3 })).Plan;

        public ValueTask DisposeAsync() => ValueTask.CompletedTask;
    }
}
