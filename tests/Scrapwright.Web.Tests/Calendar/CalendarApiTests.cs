using System.Collections.Immutable;
using System.Net;
using System.Text.Json;
using Scrapwright.Client.Api;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Audit;
using Scrapwright.Core.Calendar.Worth;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Files;
using Scrapwright.Planning;
using Scrapwright.Planning.Calendar.Advice;
using Scrapwright.Storage;

namespace Scrapwright.Web.Tests.Calendar;

public sealed class CalendarApiTests(CalendarApiTests.Example example) : IClassFixture<CalendarApiTests.Example>
{
    // Early enough in spring for evenings that are warm enough for glue.
    private static readonly DateTimeOffset Start = new(2027, 5, 3, 12, 0, 0, TimeSpan.Zero);

    [Fact]
    public async Task Without_a_plan_there_is_no_calendar_and_nothing_for_a_phone()
    {
        await using var app = await RunningApp.StartAsync();

        var view = await app.GetAsync<CalendarView>(ApiRoutes.Calendar);

        Assert.Equal((CalendarStanding.None, false, null), (view.Standing, view.HasPlan, view.Calendar));
        await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.Calendar, new MakeCalendar(1)), 404);
        await RunningApp.ReadProblemAsync(await app.Http.GetAsync(ApiRoutes.CalendarFile), 404);
        await RunningApp.ReadProblemAsync(await app.Http.GetAsync(ApiRoutes.CalendarChance), 404);
        await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.CalendarWhy, new CalendarQuestion(1)), 404);
        await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.CalendarMoves, new MoveTasks(["a"], Start)), 404);
    }

    [Fact]
    public async Task A_calendar_is_made_kept_and_read_again_and_holds()
    {
        await using var app = await PlannedAsync();

        var made = await MakeAsync(app);

        Assert.Equal(CalendarStanding.Dated, made.Standing);
        var calendar = made.Calendar!;
        Assert.Empty(ScheduleAudit.Check(calendar.Problem, calendar.Schedule));
        Assert.Equal(example.Plan.Fingerprint, calendar.Fingerprint);
        Assert.All(calendar.Tasks, t => Assert.Equal(t.Start, made.Clock!.At(made.Clock.MinuteOf(t.Start))));
        var read = await app.GetAsync<CalendarView>(ApiRoutes.Calendar);
        Assert.Equal(CalendarJson.Write(calendar), CalendarJson.Write(read.Calendar!));
        Assert.Equal((true, false, false, false, false), (read.HasPlan, read.PlanChanged, read.HoursChanged, read.DatesChanged, read.MarksChanged));
    }

    [Fact]
    public async Task What_changes_after_it_was_made_is_told()
    {
        await using var app = await PlannedAsync();
        var calendar = (await MakeAsync(app)).Calendar!;

        await app.PutAsync(ApiRoutes.Hours, ExampleWorkshop.Hours with { Makers = 2 });
        var gift = (await app.GetAsync<ImmutableArray<GiftRow>>(ApiRoutes.Gifts))[0];
        await app.PutAsync(ApiRoutes.Gift(gift.Id), gift.Gift with { Due = calendar.Gifts.First(g => g.Gift == gift.Gift.Label).Due!.Value.AddDays(1) });
        await app.PutAsync(ApiRoutes.CalendarMarks, new CalendarMarks { Done = [new(calendar.Tasks[0].Task.Id, DateTimeOffset.UtcNow)] });
        await AddPlanAsync(app.Folder, example.Plan with { Fingerprint = "another" });

        var view = await app.GetAsync<CalendarView>(ApiRoutes.Calendar);
        Assert.Equal((true, true, true, true), (view.PlanChanged, view.HoursChanged, view.DatesChanged, view.MarksChanged));
    }

    [Fact]
    public async Task A_pace_of_the_makers_own_makes_the_calendar_out_of_date_and_is_in_the_next_one()
    {
        await using var app = await PlannedAsync();
        var first = (await MakeAsync(app)).Calendar!;
        var sand = first.Tasks.First(t => t.Task.Operation == Operation.Sand).Task;

        await app.PostAsync(ApiRoutes.Times, new TimeReading(new(2027, 5, 3), Operation.Sand, 20, 40));
        Assert.True((await app.GetAsync<CalendarView>(ApiRoutes.Calendar)).TimesChanged);
        var second = await MakeAsync(app);

        Assert.False(second.TimesChanged);
        Assert.Equal(40, Assert.Single(second.Calendar!.Times).TookMinutes);
        var again = second.Calendar.Tasks.First(t => t.Task.Operation == Operation.Sand && t.Task.Id.Split('#')[0] == sand.Id.Split('#')[0]).Task;
        Assert.True(again.Minutes > again.UsualMinutes);
    }

    [Fact]
    public async Task Making_is_weighed_against_buying_for_what_is_left_of_the_plan()
    {
        await using var app = await PlannedAsync();
        var shop = await app.GetAsync<Shop>(ApiRoutes.Shop);
        await app.PutAsync(ApiRoutes.Shop, shop with { HourWorth = new(18, "€") });
        var first = await app.GetAsync<WorthAnswer>(ApiRoutes.Worth);
        await app.PutAsync(ApiRoutes.Prices, ImmutableArray.Create(new Price(PriceKind.Gift, first.Things[0].Gift, 0.50m, 1)));

        var priced = await app.GetAsync<WorthAnswer>(ApiRoutes.Worth);

        Assert.Equal(new HourWorth(18, "€"), priced.HourWorth);
        Assert.Equal((WorthVerdict.Open, WorthVerdict.Buy), (first.Things[0].Verdict, priced.Things[0].Verdict));
    }

    [Fact]
    public async Task Done_tasks_and_what_came_before_them_are_not_in_the_next_calendar()
    {
        await using var app = await PlannedAsync();
        var first = (await MakeAsync(app)).Calendar!;
        var done = first.Problem.Links.Select(l => l.After).First(id => first.Tasks.Any(t => t.Task.Id == id));
        var before = first.Problem.Links.First(l => l.After == done).Before;

        var marked = await RunningApp.ReadAsync<CalendarView>(await app.PutAsync(ApiRoutes.CalendarMarks, new CalendarMarks { Done = [new(done, DateTimeOffset.UtcNow)] }));
        Assert.Equal(done, Assert.Single(marked.Marks.Done).Task);
        var second = (await MakeAsync(app)).Calendar!;

        Assert.DoesNotContain(second.Tasks, t => t.Task.Id == done || t.Task.Id == before);
        Assert.True(second.Tasks.Length < first.Tasks.Length);
    }

    [Fact]
    public async Task From_a_day_on_means_from_its_beginning_by_the_clock_of_the_shop()
    {
        await using var app = await PlannedAsync();
        await app.PutAsync(ApiRoutes.Hours, new WorkHours { TimeZone = "Pacific/Auckland" });

        var view = await RunningApp.ReadAsync<CalendarView>(await app.PostAsync(ApiRoutes.Calendar, new MakeCalendar(1, FirstDay: new DateOnly(2027, 1, 4))));

        // New Zealand daylight time is 13 hours ahead of UTC in January (IANA database).
        Assert.Equal(new DateTimeOffset(2027, 1, 4, 0, 0, 0, TimeSpan.FromHours(13)), view.Calendar!.Start);
    }

    [Fact]
    public async Task The_chances_are_those_of_the_latest_calendar()
    {
        await using var app = await PlannedAsync();
        var first = (await MakeAsync(app)).Calendar!;

        var chance = await app.GetAsync<CalendarChance>(ApiRoutes.CalendarChance);

        Assert.Equal(first.Gifts.Select(g => g.Gift), chance.Gifts.Select(g => g.Gift));
        Assert.Equal(JsonSerializer.Serialize(CalendarChances.Of(first), PlanJson.Options), JsonSerializer.Serialize(chance, PlanJson.Options));
        await app.PutAsync(ApiRoutes.CalendarMarks, new CalendarMarks { Done = [.. first.Tasks.Where(t => t.Task.Gifts.Contains(first.Gifts[0].Gift)).Select(t => new DoneTask(t.Task.Id, DateTimeOffset.UtcNow))] });
        await MakeAsync(app);
        Assert.DoesNotContain(first.Gifts[0].Gift, (await app.GetAsync<CalendarChance>(ApiRoutes.CalendarChance)).Gifts.Select(g => g.Gift));
    }

    [Fact]
    public async Task What_holds_it_up_is_answered_of_the_calendar_as_it_is_and_changes_nothing()
    {
        await using var app = await PlannedAsync();
        var calendar = (await MakeAsync(app)).Calendar!;

        var why = await RunningApp.ReadAsync<CalendarWhy>(await app.PostAsync(ApiRoutes.CalendarWhy, new CalendarQuestion(6)));

        Assert.NotEmpty(why.HoldUps);
        Assert.All(why.HoldUps.Where(h => h.Kind == OtherwiseKind.Helper), h => Assert.Equal(calendar.Hours.Makers + 1, h.Hours!.Makers));
        Assert.Equal(CalendarJson.Write(calendar), CalendarJson.Write((await app.GetAsync<CalendarView>(ApiRoutes.Calendar)).Calendar!));
        Assert.Equal("seconds", Assert.Single((await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.CalendarWhy, new CalendarQuestion(301)), 400)).Problems).Field);

        await AddPlanAsync(app.Folder, example.Plan with { Fingerprint = "another" });
        await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.CalendarWhy, new CalendarQuestion(1)), 409);
    }

    [Fact]
    public async Task What_has_a_price_is_asked_about_when_a_gift_is_late()
    {
        await using var app = await PlannedAsync();
        await app.PutAsync(ApiRoutes.Prices, new[] { new Price(PriceKind.Gift, example.Plan.Made[0].Gift, 12.50m, 1) });
        await RunningApp.ReadAsync<CalendarView>(await app.PostAsync(ApiRoutes.Calendar, new MakeCalendar(1, FirstDay: new DateOnly(2027, 6, 12))));

        var why = await RunningApp.ReadAsync<CalendarWhy>(await app.PostAsync(ApiRoutes.CalendarWhy, new CalendarQuestion(6)));

        Assert.Contains(why.Alternatives.Select(a => a.Question).Concat(why.NoGain).Concat(why.NotTried), text => text.Contains("12.50", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_question_is_ended_with_what_is_known()
    {
        await using var app = await PlannedAsync();
        await MakeAsync(app);

        var asking = app.PostAsync(ApiRoutes.CalendarWhy, new CalendarQuestion(300));
        // The question may still be on its way: said again until it is answered.
        while (!asking.IsCompleted)
        {
            await app.Http.PostAsync(ApiRoutes.CalendarWhyEnd, null);
            await Task.WhenAny(asking, Task.Delay(100, TestContext.Current.CancellationToken));
        }

        Assert.NotEmpty((await RunningApp.ReadAsync<CalendarWhy>(await asking)).NotTried);
    }

    [Fact]
    public async Task Moved_tasks_are_held_and_stay_there_when_it_is_made_again()
    {
        await using var app = await PlannedAsync();
        var view = await MakeAsync(app);
        var (calendar, clock) = (view.Calendar!, view.Clock!);
        var task = calendar.Tasks[0].Task.Id;
        var there = Assert.IsType<CalendarOutcome.Dated>(CalendarMoves.ToNextWindow(calendar, clock, [task], isLater: true, Start)).Calendar.Tasks.Single(t => t.Task.Id == task).Start;

        var moved = await RunningApp.ReadAsync<CalendarView>(await app.PostAsync(ApiRoutes.CalendarMoves, new MoveTasks([task], there)));

        Assert.Equal(new PinnedTask(task, there), Assert.Single(moved.Marks.Pinned));
        Assert.Equal(there, moved.Calendar!.Tasks.Single(t => t.Task.Id == task).Start);
        Assert.Empty(ScheduleAudit.Check(moved.Calendar.Problem, moved.Calendar.Schedule));
        Assert.Equal(there, (await MakeAsync(app)).Calendar!.Tasks.Single(t => t.Task.Id == task).Start);
    }

    [Fact]
    public async Task A_move_that_does_not_go_says_what_was_found_and_changes_nothing()
    {
        await using var app = await PlannedAsync();
        var calendar = (await MakeAsync(app)).Calendar!;
        var task = calendar.Tasks[0].Task.Id;

        var night = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.CalendarMoves, new MoveTasks([task], Start.AddHours(14))), 400);
        var early = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.CalendarMoves, new MoveTasks([task], Start.AddDays(-1))), 400);
        var unknown = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.CalendarMoves, new MoveTasks(["whittle/spoon", task, task], Start)), 400);
        var none = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.CalendarMoves, new MoveTasks([], Start)), 400);

        Assert.Contains("within one window", Assert.Single(night.Problems).Expected);
        Assert.Equal("start", Assert.Single(early.Problems).Field);
        Assert.Equal(["tasks[0]", "tasks[2]"], unknown.Problems.Select(p => p.Field));
        Assert.Equal("tasks", Assert.Single(none.Problems).Field);
        Assert.True((await app.GetAsync<CalendarView>(ApiRoutes.Calendar)).Marks.AreNone);
    }

    [Fact]
    public async Task Wrong_marks_are_told_by_field_and_the_old_ones_stay()
    {
        await using var app = await PlannedAsync();
        var calendar = (await MakeAsync(app)).Calendar!;
        var task = calendar.Tasks[0].Task.Id;
        var now = DateTimeOffset.UtcNow;

        var problem = await RunningApp.ReadProblemAsync(
            await app.PutAsync(ApiRoutes.CalendarMarks, new CalendarMarks
            {
                Done = [new("whittle/spoon", now), new(task, now.AddDays(2)), new(task, now)],
                Pinned = [new("whittle/spoon", Start), new(task, Start.AddHours(14))],
            }),
            400);

        Assert.Equal(["done[0].task", "done[2].task", "pinned[0].task", "done[1].end", "pinned[1].start"], problem.Problems.Select(p => p.Field));
        Assert.Equal("whittle/spoon", problem.Problems[0].Found);
        Assert.True((await app.GetAsync<CalendarView>(ApiRoutes.Calendar)).Marks.AreNone);
    }

    [Theory]
    [InlineData("""{ "seconds": 0 }""", "seconds")]
    [InlineData("""{ "seconds": 61 }""", "seconds")]
    [InlineData("""{ "seconds": 2, "start": "0001-01-01T00:00:00Z" }""", "start")]
    [InlineData("""{ "seconds": 2, "start": "soon" }""", "start")]
    [InlineData("""{ "seconds": "long" }""", "seconds")]
    [InlineData("""{ "seconds": 2, "firstDay": "1999-12-31" }""", "firstDay")]
    [InlineData("""{ "seconds": 2, "firstDay": "2027-02-30" }""", "firstDay")]
    [InlineData("""{ "seconds": 2, "firstDay": "2027-02-03", "start": "2027-02-03T10:00:00Z" }""", "firstDay")]
    [InlineData("[]", "")]
    public async Task A_question_that_is_none_is_refused(string body, string field)
    {
        await using var app = await RunningApp.StartAsync();

        var problem = await RunningApp.ReadProblemAsync(await app.Http.PostAsync(ApiRoutes.Calendar, RunningApp.Text(body)), 400);

        Assert.StartsWith(field, Assert.Single(problem.Problems).Field, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_hours_it_is_impossible_with_reasons_and_the_calendar_before_stays()
    {
        await using var app = await PlannedAsync();
        await MakeAsync(app);
        await app.PutAsync(ApiRoutes.Hours, new WorkHours { Week = [] });

        var view = await MakeAsync(app);

        Assert.Equal(CalendarStanding.Impossible, view.Standing);
        Assert.Contains("no hours", view.Reasons[0].Found);
        Assert.NotNull(view.Calendar);
        Assert.True(view.HoursChanged);
    }

    [Fact]
    public async Task A_calendar_that_the_audit_rejects_is_not_shown()
    {
        await using var app = await PlannedAsync();
        var calendar = (await MakeAsync(app)).Calendar!;
        var store = await WorkshopStore.OpenAsync(app.Folder);
        var wrong = calendar.Schedule with { Tasks = [.. calendar.Schedule.Tasks.Select(t => t with { Start = t.Start + 600, End = t.End + 600 })] };
        await store.AddCalendarAsync(calendar with { Schedule = wrong }, new());

        Assert.Null((await app.GetAsync<CalendarView>(ApiRoutes.Calendar)).Calendar);
    }

    [Fact]
    public async Task A_phone_gets_evenings_and_those_that_are_free_now_are_cancelled()
    {
        await using var app = await PlannedAsync();
        await MakeAsync(app);
        var first = await app.Http.GetAsync(ApiRoutes.CalendarFile);
        Assert.Equal("text/calendar", first.Content.Headers.ContentType?.MediaType);
        Assert.Equal("calendar.ics", first.Content.Headers.ContentDisposition?.FileName);
        Assert.DoesNotContain("STATUS:CANCELLED", await first.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        var hours = new WorkHours { Week = [new(DayOfWeek.Sunday, [new(new(9, 0), new(19, 0))]), new(DayOfWeek.Monday, [new(new(9, 0), new(19, 0))])] };
        await app.PutAsync(ApiRoutes.Hours, hours);
        await MakeAsync(app);

        var text = await app.Http.GetStringAsync(ApiRoutes.CalendarFile);

        Assert.StartsWith("BEGIN:VCALENDAR", text, StringComparison.Ordinal);
        Assert.Contains("STATUS:CANCELLED", text, StringComparison.Ordinal);
    }

    private async Task<RunningApp> PlannedAsync()
    {
        var app = await RunningApp.StartAsync();
        (await app.Http.PostAsync(ApiRoutes.Example, null)).EnsureSuccessStatusCode();
        await AddPlanAsync(app.Folder, example.Plan);
        return app;
    }

    private static async Task AddPlanAsync(string folder, Plan plan) => await (await WorkshopStore.OpenAsync(folder)).AddPlanAsync(plan);

    private static async Task<CalendarView> MakeAsync(RunningApp app) =>
        await RunningApp.ReadAsync<CalendarView>(await app.PostAsync(ApiRoutes.Calendar, new MakeCalendar(2, Start)));

    /// <summary>A plan of three of the example's gifts, made once for all of these tests.</summary>
    public sealed class Example : IAsyncLifetime
    {
        public Plan Plan { get; private set; } = null!;

        public async ValueTask InitializeAsync()
        {
            ImmutableArray<Gift> gifts = [.. ExampleWorkshop.Request.Gifts.Where(g => g.Design == "striped-squares").Take(3)];
            Plan = Assert.IsType<PlanOutcome.Planned>(await Planner.PlanAsync(ExampleWorkshop.Request with { Gifts = gifts }, new PlanLimits { Seconds = 2 })).Plan;
        }

        public ValueTask DisposeAsync() => ValueTask.CompletedTask;
    }
}
