using System.Collections.Immutable;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Plans;

namespace Scrapwright.Core.Tests.Calendar;

public sealed class CalendarProblemTests
{
    // A Monday. In a temperate shed May has 13.4 °C on average, and the months before are too cold for glue.
    private static readonly DateTimeOffset Start = DateTimeOffset.Parse("2027-05-03T12:00Z");

    [Fact]
    public void Tasks_stand_at_their_stations_in_their_hours_with_the_makers_hand()
    {
        var problem = Made(Request()).Schedule;

        var joint = problem.Tasks.Single(t => t.Id == "face-joint/Ida");
        Assert.Equal([new ScheduleNeed("maker", 1), new ScheduleNeed("jointer", 1)], joint.Needs.AsEnumerable());
        Assert.Equal(("machines", "face-joint@jointer", 0, (int?)null), (joint.Hours, joint.SetUp, joint.EarliestStart, joint.FixedStart));
        Assert.Equal(new ScheduleSetUp("face-joint@jointer", "jointer", "maker", 5), problem.SetUps.Single(s => s.Key == joint.SetUp));

        // Half past six until eight, then no machines: Tuesday is the first evening, 30.5 hours after the start.
        Assert.Equal(new ScheduleWindow(1830, 1920), problem.Hours.Single(h => h.Key == "machines").Windows[0]);
        Assert.Equal(new ScheduleWindow(1830, 2010), problem.Hours.Single(h => h.Key == "shop").Windows[0]);
        Assert.All(problem.Tasks, t => Assert.Contains(problem.Hours, h => h.Key == t.Hours));
        Assert.All(problem.Tasks.SelectMany(t => t.Needs), n => Assert.True(problem.Resources.Single(r => r.Id == n.Resource).Capacity >= n.Amount));
    }

    [Fact]
    public void When_all_is_ready_counts_in_whole_hours() => Assert.Equal((60, 0), (Made(Request()).Schedule.ReadyStepMinutes, Made(Request()).Schedule.ReadyOffsetMinutes));

    [Fact]
    public void A_gift_is_due_when_its_day_begins_by_the_clock_on_the_wall()
    {
        var request = Request() with { Hours = new WorkHours { TimeZone = "America/New_York" }, Gifts = [Gift(new DateOnly(2027, 6, 19)) with { Priority = 3 }] };

        var delivery = Assert.Single(Made(request).Schedule.Deliveries);

        // Midnight in New York in summer is 4:00 by UTC: 46 days and 16 hours after the start.
        Assert.Equal(("Ida", (46 * 1440) + (16 * 60), 3), (delivery.Id, delivery.Due!.Value, delivery.Priority));
        Assert.Equal(delivery.Due.Value - (CalendarProblem.SlackDays * 1440), delivery.Wanted);
        Assert.Null(Assert.Single(Made(Request()).Schedule.Deliveries).Due);
        Assert.Null(Assert.Single(Made(Request()).Schedule.Deliveries).Wanted);
        // A day that is over stays so, and every hour of it counts.
        Assert.Equal(-(48 + 8) * 60, Assert.Single(Made(request with { Gifts = [Gift(new DateOnly(2027, 5, 1))] }).Schedule.Deliveries).Due);
    }

    [Fact]
    public void Glue_and_finish_wait_for_warm_months_and_set_as_slowly_as_the_coldest_of_them()
    {
        // April has 9.9 °C and May 13.4 °C in a temperate shed, glue and oil ask for 10 °C.
        var made = Made(Request() with { Start = DateTimeOffset.Parse("2027-04-01T00:00Z"), Gifts = [Gift(new DateOnly(2027, 6, 19))] });

        Assert.Equal(30 * 1440, made.Windows.MinuteOf(new DateOnly(2027, 5, 1)));
        Assert.True(made.Schedule.Hours.Single(h => h.Key == "shop").Windows[0].Start < 30 * 1440);
        Assert.True(made.Schedule.Hours.Single(h => h.Key == "shop/10- °C").Windows[0].Start >= 30 * 1440);
        Assert.True(made.Schedule.Hours.Single(h => h.Key == "shop/10-30 °C").Windows[0].Start >= 30 * 1440);
        // 24 hours at 21 °C; 2^(7.6 / 10) as long at 13.4 °C is 40.6 hours, whole hours downwards.
        Assert.Equal(40 * 60, made.Schedule.Links.Single(l => l.Before == "glue-up/G1").LeastMinutes);
    }

    [Fact]
    public void No_warm_month_no_hours_and_no_such_zone_are_reasons()
    {
        var winter = Refused(Request() with { Start = DateTimeOffset.Parse("2027-11-01T00:00Z"), Days = 90 });
        Assert.Contains(winter, r => r.Where.StartsWith("Glue up G1", StringComparison.Ordinal) && r.Expected.Contains("10 °C", StringComparison.Ordinal));
        Assert.DoesNotContain(winter, r => r.Where.StartsWith("Joint", StringComparison.Ordinal));

        Assert.Contains(Refused(Request() with { Hours = new WorkHours { Week = [] } }), r => r.Found.StartsWith("no hours until 2028-05-02", StringComparison.Ordinal));
        var late = new WorkHours { Week = [new(DayOfWeek.Monday, [new(new(21, 0), new(22, 0))])] };
        Assert.All(Refused(Request() with { Hours = late }), r => Assert.Contains("machines", r.Found, StringComparison.Ordinal));

        var zone = Assert.Single(Refused(Request() with { Hours = new WorkHours { TimeZone = "Europe/Dubln" } }));
        Assert.Equal(("time zone", "Europe/Dubln"), (zone.Where, zone.Found));
    }

    [Fact]
    public void Too_few_clamps_are_a_reason()
    {
        var plan = Plan(shop => shop with { Clamps = [new("bar", Length.FromInches(24), 2), new("short", Length.FromInches(3), 9)] });

        var reason = Assert.Single(Refused(Request() with { Plan = plan }));

        Assert.Equal("Glue up G1: Ida", reason.Where);
        Assert.StartsWith("2 clamps that reach", reason.Found, StringComparison.Ordinal);
        Assert.StartsWith("3 clamps", reason.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_done_leaves_what_still_sets_and_what_is_held()
    {
        // Glued an hour before the start. In a shed at 13.4 °C glue holds its clamps for 105 minutes (60 × 2^0.76, to five minutes upwards) and cures for 40 hours.
        var done = Request() with { Gifts = [Gift(new DateOnly(2027, 6, 19))], Done = [new("glue-up/G1", Start.AddHours(-1)), new("nothing", Start)] };

        var problem = Made(done).Schedule;

        Assert.Equal("flatten-panel/Ida", problem.Tasks[0].Id);
        Assert.Equal((40 * 60) - 60, problem.Tasks[0].EarliestStart);
        var held = problem.Tasks.Single(t => t.Id == "done/clamps/glue-up/G1");
        Assert.Equal((45, 0), (held.Minutes, held.FixedStart!.Value));
        Assert.Equal([new ScheduleNeed("clamps 12 in", 3)], held.Needs.AsEnumerable());
        Assert.DoesNotContain(problem.Links, l => l.Before == "glue-up/G1" || l.After == "flatten-panel/Ida");
        Assert.DoesNotContain(problem.SetUps, s => s.Key == "glue-up@clamps");
    }

    [Fact]
    public void Oil_that_soaks_is_still_to_be_wiped_in_time()
    {
        var flooded = Work(Request()).Tasks.Single(t => t.Id.EndsWith("coat1.1", StringComparison.Ordinal)).Id;

        var problem = Made(Request() with { Done = [new(flooded, Start.AddMinutes(-10))] }).Schedule;

        // A quarter of an hour at least and half an hour at most, ten minutes of it are over.
        var link = Assert.Single(problem.Links, l => l.Before == "done/" + flooded);
        Assert.Equal((5, 20), (link.LeastMinutes, link.MostMinutes!.Value));
        Assert.Equal((0, 0), problem.Tasks.Where(t => t.Id == "done/" + flooded).Select(t => (t.Minutes, t.FixedStart!.Value)).Single());
    }

    [Fact]
    public void A_gift_of_which_all_is_done_is_ready_once_it_is_dry()
    {
        var plan = Plan(shop => shop with { Finish = "shellac" });
        var last = Work(Request() with { Plan = plan }).Tasks[^1].Id;

        // Shellac: twelve hours until it may be handled.
        var drying = Made(Request() with { Plan = plan, Done = [new(last, Start.AddHours(-2))] });
        var dry = Made(Request() with { Plan = plan, Done = [new(last, Start.AddHours(-13))] });

        Assert.Equal([new ScheduleLast("done/" + last, 600)], Assert.Single(drying.Schedule.Deliveries).Last.AsEnumerable());
        Assert.Empty(dry.Schedule.Deliveries);
        Assert.Empty(dry.Schedule.Tasks);
    }

    [Fact]
    public void Pins_and_the_calendar_before_are_in_minutes_from_the_start()
    {
        var before = CalendarBench.Calendar(Made(Request()));
        var request = Request() with
        {
            Start = Start.AddMinutes(30),
            Pinned = [new("face-joint/Ida", Start.AddMinutes(90)), new("glue-up/G1", Start.AddMinutes(-5)), new("nothing", Start.AddMinutes(40))],
            Before = before,
        };

        var problem = Made(request).Schedule;

        Assert.Equal(60, problem.Tasks.Single(t => t.Id == "face-joint/Ida").FixedStart);
        Assert.Null(problem.Tasks.Single(t => t.Id == "glue-up/G1").FixedStart);
        var first = before.Tasks.First(t => t.Start >= request.Start);
        Assert.Equal(new ScheduledTask(first.Task.Id, before.Schedule.Tasks.Single(t => t.Task == first.Task.Id).Start - 30, before.Schedule.Tasks.Single(t => t.Task == first.Task.Id).End - 30), problem.Before[0]);
    }

    [Fact]
    public void Wood_settles_from_when_the_pile_came_in()
    {
        var plan = Plan(shop => shop with { PileMoisturePercent = 22 });
        var needed = Work(Request() with { Plan = plan }).Tasks[0].SettleMinutes;

        Assert.Equal(needed, Made(Request() with { Plan = plan }).Schedule.Tasks[0].EarliestStart);
        Assert.Equal(needed - 1440, Made(Request() with { Plan = plan, PileSince = Start.AddDays(-1) }).Schedule.Tasks[0].EarliestStart);
        Assert.Equal(0, Made(Request() with { Plan = plan, PileSince = Start.AddYears(-1) }).Schedule.Tasks[0].EarliestStart);
    }

    private static CalendarRequest Request() => new() { Plan = Plan(shop => shop), HomeZone = TimeZoneInfo.Utc, Start = Start };

    private static Plan Plan(Func<Shop, Shop> change) => ExamplePlans.Squares with
    {
        Request = ExamplePlans.Squares.Request with { Shop = change(ExamplePlans.Squares.Request.Shop with { Climate = "shed-temperate" }) },
    };

    private static Core.Gifts.Gift Gift(DateOnly due) => ExamplePlans.Squares.Request.Gifts[0] with { Due = due };

    private static WorkTasks Work(CalendarRequest request) => Made(request).Work;

    private static CalendarProblem Made(CalendarRequest request) => Assert.IsType<CalendarMaking.Made>(CalendarProblem.Make(request)).Problem;

    private static ImmutableArray<ScheduleReason> Refused(CalendarRequest request) => Assert.IsType<CalendarMaking.Refused>(CalendarProblem.Make(request)).Reasons;
}
