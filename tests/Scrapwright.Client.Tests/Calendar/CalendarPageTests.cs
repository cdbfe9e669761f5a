using AngleSharp.Dom;
using Bunit;
using Scrapwright.Client.Api;
using Scrapwright.Client.Calendar;
using Scrapwright.Client.Shell;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Calendar;
using Scrapwright.Core.Tests.Plans;
using Microsoft.Extensions.DependencyInjection;

namespace Scrapwright.Client.Tests.Calendar;

public sealed class CalendarPageTests : ScreenContext
{
    private static readonly DateTimeOffset Start = DateTimeOffset.Parse("2027-05-03T12:00Z");

    private static readonly CalendarProblem Problem = Assert.IsType<CalendarMaking.Made>(CalendarProblem.Make(new CalendarRequest
    {
        Plan = ExamplePlans.Squares,
        Hours = new WorkHours { TimeZone = "Europe/Dublin" },
        HomeZone = TimeZoneInfo.Utc,
        Start = Start,
        Gifts = [ExamplePlans.Squares.Request.Gifts[0] with { Due = new DateOnly(2027, 6, 19) }],
    })).Problem;

    private static readonly WorkCalendar Made = CalendarBench.Calendar(Problem);

    private static readonly CalendarView View = new()
    {
        Standing = CalendarStanding.Dated,
        Now = Start,
        HasPlan = true,
        Marks = new(),
        Calendar = Made,
        Clock = ShopClock.Of(Made.Start, Problem.Schedule.HorizonMinutes, Problem.Windows.Zone),
    };

    [Fact]
    public void Without_a_plan_it_leads_to_the_plan()
    {
        var page = Open(View with { HasPlan = false, Calendar = null, Clock = null, Standing = CalendarStanding.None });

        page.WaitForAssertion(() => Assert.Equal("plan", page.Find(".empty a").GetAttribute("href")));
    }

    [Fact]
    public void Without_a_calendar_one_is_made_and_shown()
    {
        Far.Next = View;
        var page = Open(View with { Calendar = null, Clock = null, Standing = CalendarStanding.None });
        Assert.Contains("No calendar yet", page.WaitForElement(".empty").TextContent);

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Equal("Everything is ready in time.", page.Find(".ready-words").TextContent));
        Assert.Contains($"POST {ApiRoutes.Calendar}", Far.Requests);
        Assert.Equal(ApiRoutes.CalendarFile, page.Find("a[download]").GetAttribute("href"));
    }

    [Fact]
    public void Reasons_stand_there_when_the_work_does_not_fit()
    {
        Far.Next = View with { Standing = CalendarStanding.Impossible, Reasons = [new("Glue up G1", "no hours", "working hours")] };
        var page = Open(View);

        page.WaitForElement("#make-calendar");
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("Glue up G1: found no hours, expected working hours", page.Find(".problem-box li").TextContent));
        Assert.Contains("the one before", page.Find(".problem-box").TextContent);
    }

    [Fact]
    public void What_has_changed_since_is_said()
    {
        var page = Open(View with { HoursChanged = true, DatesChanged = true });

        page.WaitForAssertion(() => Assert.Contains("Your hours and the dates have changed since.", page.Find(".notice.warning").TextContent));
    }

    [Fact]
    public void A_late_gift_is_named_with_a_mark_and_by_how_much()
    {
        var late = Made.Gifts[0] with { Due = new DateOnly(2027, 5, 5), DueAt = Made.Gifts[0].ReadyAt!.Value.AddHours(-50) };
        var page = Open(View with { Calendar = Made with { Gifts = [late] } });

        page.WaitForAssertion(() => Assert.Equal("1 gift is late.", page.Find(".ready-words").TextContent));
        Assert.Equal("!", page.Find(".ready-in-time .audit-sign").TextContent);
        Assert.Contains($"{late.Gift} is ready", page.Find(".ready-in-time li").TextContent);
        Assert.Contains("3 days after its day began", page.Find(".ready-in-time li").TextContent);
    }

    [Fact]
    public void The_next_evening_has_clock_times_and_set_ups_that_are_no_tasks()
    {
        var page = Open(View);

        page.WaitForAssertion(() => Assert.Equal("Tuesday 4 May, 18:30 to 21:30", page.Find(".tonight-when").TextContent));
        Assert.Equal("Next", page.Find("#tonight-title").TextContent);
        var lines = page.FindAll(".tonight > .tonight-lines > li");
        Assert.Equal("18:30", lines[0].QuerySelector(".tonight-clock")!.TextContent);
        Assert.StartsWith("Set up ", lines[0].QuerySelector(".tonight-what")!.TextContent, StringComparison.Ordinal);
        Assert.Null(lines[0].QuerySelector("button"));
        var works = WorkLines.Of(Made, Made.Evenings[0]).Where(l => !l.IsSetUp).ToArray();
        Assert.Equal(works.Length, lines.Count(l => l.QuerySelector("button") is not null));
    }

    [Fact]
    public void A_line_is_marked_as_done_with_all_its_tasks_and_undone()
    {
        var page = Open(View);
        var line = WorkLines.Of(Made, Made.Evenings[0]).First(l => !l.IsSetUp);

        page.WaitForElement(".tonight .done-mark").Click();

        page.WaitForAssertion(() => Assert.Equal("true", page.Find(".tonight .done-mark").GetAttribute("aria-pressed")));
        Assert.Equal(line.Tasks.Select(t => t.Task.Id), Far.Calendar!.Marks.Done.Select(d => d.Task));
        var undoing = Services.GetRequiredService<Undoing>();
        Assert.Equal((line.Title, "marked as done"), (undoing.Latest!.Thing, undoing.Latest.Deed));

        page.InvokeAsync(() => undoing.UndoLatestAsync());

        page.WaitForAssertion(() => Assert.Equal("false", page.Find(".tonight .done-mark").GetAttribute("aria-pressed")));
        Assert.True(Far.Calendar.Marks.AreNone);
    }

    [Fact]
    public void What_had_to_be_done_before_counts_as_done()
    {
        var link = Made.Problem.Links[0];
        var page = Open(View with { Marks = new() { Done = [new(link.After, Start)] } });

        page.WaitForAssertion(() => Assert.Contains("done", Line(page, link.Before).ClassList));
    }

    [Fact]
    public void Weeks_hold_every_task_and_say_how_full_a_window_is()
    {
        var page = Open(View);

        page.WaitForAssertion(() => Assert.Equal(7, page.FindAll(".week")[0].Children.Length));
        var evening = Made.Evenings[0];
        var used = Made.Tasks.Where(t => evening.Tasks.Contains(t.Task.Id)).Sum(t => t.Task.Minutes) + Made.Settings.Where(s => s.Start >= evening.Start && s.Start < evening.End).Sum(s => s.Setting.Minutes);
        Assert.Equal($"{used} of 180 min", page.Find(".fullness .hush").TextContent);
        Assert.Equal(Made.Evenings.Sum(e => WorkLines.Of(Made, e).Count(l => !l.IsSetUp)), page.FindAll(".day-line").Count);
    }

    [Fact]
    public void Work_is_moved_later_by_key_says_what_moves_and_is_kept()
    {
        var page = Open(View);
        var task = Made.Tasks[^1];
        page.WaitForElement(".day-line");
        Line(page, task.Task.Id).Click();
        Assert.True(page.Find("#move-keep").HasAttribute("disabled"));

        Line(page, task.Task.Id).KeyDown("ArrowRight");

        page.WaitForAssertion(() => Assert.Contains("Nothing else moves", page.Find(".move-words").TextContent));
        Assert.Contains("No gift becomes late", page.Find(".move-words").TextContent);
        page.Find("#move-keep").Click();

        page.WaitForAssertion(() => Assert.Equal(task.Task.Id, Assert.Single(Far.Moves).Tasks.Single()));
        Assert.True(Far.Moves[0].Start > task.Start);
        page.WaitForAssertion(() => Assert.Contains(task.Task.Title, page.Find(".pin-list").TextContent));

        page.Find(".pin-list button").Click();
        page.WaitForAssertion(() => Assert.True(Far.Calendar!.Marks.AreNone));
    }

    [Fact]
    public void A_task_that_is_let_go_is_told_above()
    {
        var task = Made.Tasks[^1];
        var held = Made with { Problem = Made.Problem with { Tasks = [.. Made.Problem.Tasks.Select(t => t.Id == task.Task.Id ? t with { FixedStart = View.Clock!.MinuteOf(task.Start) } : t)] } };
        var page = Open(View with { Calendar = held, Marks = new() { Pinned = [new(task.Task.Id, task.Start)] } });
        page.WaitForElement(".pin-list button");
        Assert.Empty(page.FindAll(".notice.warning"));

        page.Find(".pin-list button").Click();

        page.WaitForAssertion(() => Assert.Contains("A task was let go.", page.Find(".notice.warning").TextContent));
    }

    [Fact]
    public void What_follows_moves_too_and_leaving_it_puts_all_back()
    {
        var page = Open(View);
        page.WaitForElement(".day-line");
        var first = Made.Problem.Links[0].Before;
        Line(page, first).Click();

        page.Find("#move-later").Click();

        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll(".day-line.beside")));
        Assert.Contains("other task", page.Find(".move-words").TextContent);
        page.Find("#move-leave").Click();
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".day-line.beside, .move-panel")));
        Assert.Empty(Far.Moves);
    }

    [Fact]
    public void A_line_dragged_to_another_day_is_there()
    {
        var page = Open(View);
        page.WaitForElement(".day-line");
        var task = Made.Tasks[^1];
        var day = Moments.DateOf(task.Start).AddDays(7);

        page.InvokeAsync(() => page.FindComponent<WeekList>().Instance.LineDropped(task.Task.Id, $"{day:yyyy-MM-dd}"));

        page.WaitForAssertion(() => Assert.Equal($"{day:yyyy-MM-dd}", Line(page, task.Task.Id).Closest("[data-day]")!.GetAttribute("data-day")));
    }

    [Fact]
    public void Bars_have_their_words()
    {
        var page = Open(View);

        var bar = page.WaitForElement(".gift-bar");

        Assert.StartsWith($"{Made.Gifts[0].Gift}: work on ", bar.GetAttribute("aria-label"), StringComparison.Ordinal);
        Assert.DoesNotContain("start by", page.Find(".bar-facts").TextContent);
        Assert.Contains($"{Made.Gifts[0].SlackDays} days to spare", page.Find(".bar-facts").TextContent);
    }

    [Fact]
    public void Chances_stand_above_and_beside_each_gift_once_they_are_known()
    {
        var due = Made.Gifts[0].Due!.Value;
        ReadyChance sure = new()
        {
            Gift = Made.Gifts[0].Gift,
            Due = due,
            PerMille = 912,
            ReadyBy = due.AddDays(2),
            StartBy = Start.AddDays(1),
            SafeStartBy = Start,
            EveningsToKeepFree = 3,
            EveningsLeft = 1,
        };
        Far.Chance = new() { Runs = 2000, AskedPerMille = 950, Gifts = [sure], All = sure with { Gift = "" } };

        var page = Open(View);

        page.WaitForAssertion(() => Assert.Contains("all is in time 9 times in 10", page.Find(".ready-sure").TextContent));
        Assert.Contains(Made.Gifts[0].Gift, page.Find(".ready-sure").TextContent);
        string[] facts = [.. page.FindAll(".bar-facts span").Select(s => s.TextContent)];
        Assert.Equal(
            ["in time 9 times in 10", $"promise {Moments.Day(due.AddDays(2))}", "start by Tue 4 May", "to be sure by Mon 3 May", "keep 3 evenings free at the end"],
            facts[^5..]);
    }

    [Fact]
    public void What_holds_it_up_is_asked_and_hours_are_taken_with_one_press()
    {
        var hours = new WorkHours { TimeZone = "Europe/Dublin", Makers = 2 };
        Far.CalendarWhy = new()
        {
            Alternatives = [new() { Kind = OtherwiseKind.GiftFinish, Question = "Would shellac do for Oak?", InTime = ["Oak"], LateThen = [] }],
            HoldUps =
            [
                new() { Kind = OtherwiseKind.Helper, What = "somebody who helps", Hours = hours, SoonerDays = 4, InTime = [], HoursLessLate = 0, Levels = [] },
                new() { Kind = OtherwiseKind.Clamps, What = "4 more clamps", SoonerDays = 1, InTime = [], HoursLessLate = 0, Levels = [] },
            ],
            NoGain = ["machines until 21:00"],
            NotTried = [],
            LongerSearchHelps = false,
        };
        var page = Open(View);
        page.WaitForElement("#ask-why");

        page.Find("#holds-up form").Submit();

        page.WaitForAssertion(() => Assert.Equal(3, page.FindAll(".ways li").Count));
        var ways = page.FindAll(".ways li");
        Assert.Contains("Then Oak is in time, and nothing is late.", ways[0].TextContent);
        Assert.Equal("gifts", ways[0].QuerySelector("a")!.GetAttribute("href"));
        Assert.Contains("the last gift 4 days sooner", ways[1].TextContent);
        Assert.Equal("shop#clamps", ways[2].QuerySelector("a")!.GetAttribute("href"));
        Assert.Contains("machines until 21:00", page.Find("#holds-up details").TextContent);

        ways[1].QuerySelector("button")!.Click();

        page.WaitForAssertion(() => Assert.Equal(2, Far.Hours.Makers));
        page.WaitForAssertion(() => Assert.Contains($"POST {ApiRoutes.Calendar}", Far.Requests));
        var undoing = Services.GetRequiredService<Undoing>();
        Assert.Equal("taken into your hours", undoing.Latest!.Deed);
        page.InvokeAsync(() => undoing.UndoLatestAsync());
        page.WaitForAssertion(() => Assert.Equal(1, Far.Hours.Makers));
    }

    [Fact]
    public void A_calendar_is_asked_for_from_a_day_on()
    {
        var page = Open(View);
        page.WaitForElement("#calendar-first").Change("2027-05-10");

        page.Find(".run-form").Submit();

        page.WaitForAssertion(() => Assert.Equal(new DateOnly(2027, 5, 10), Far.Made?.FirstDay));
    }

    [Fact]
    public void What_is_to_be_bought_has_its_day()
    {
        var drilled = Made.Tasks[0] with { Task = Made.Tasks[0].Task with { Operation = Operation.Drill, Gifts = ["Elm"] } };
        var page = Open(View with { Calendar = Made with { Tasks = [drilled, .. Made.Tasks[1..]], Shopping = [new("drill bit", 2, Length.FromInches(7, 16), Length.Zero, "Elm")] } });

        page.WaitForAssertion(() => Assert.Contains($"before {Moments.Day(drilled.Start)}", page.Find("#to-buy li").TextContent));
    }

    private IRenderedComponent<CalendarPage> Open(CalendarView view)
    {
        Far.Calendar = view;
        return Render<CalendarPage>();
    }

    private static IElement Line(IRenderedComponent<CalendarPage> page, string task)
    {
        var evening = Made.Evenings.First(e => e.Tasks.Contains(task));
        var head = WorkLines.Of(Made, evening).First(l => l.Tasks.Any(t => t.Task.Id == task)).Tasks[0].Task.Id;
        return page.FindAll(".day-line").First(l => l.GetAttribute("data-line") == head || l.GetAttribute("data-line") == task);
    }
}
