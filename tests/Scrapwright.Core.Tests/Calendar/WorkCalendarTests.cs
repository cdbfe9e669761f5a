using Scrapwright.Core.Calendar;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Plans;

namespace Scrapwright.Core.Tests.Calendar;

public sealed class WorkCalendarTests
{
    private static readonly CalendarProblem Problem = Assert.IsType<CalendarMaking.Made>(CalendarProblem.Make(new CalendarRequest
    {
        Plan = ExamplePlans.Squares,
        Hours = new WorkHours { TimeZone = "Europe/Dublin" },
        HomeZone = TimeZoneInfo.Utc,
        Start = DateTimeOffset.Parse("2027-05-03T12:00Z"),
        Gifts = [ExamplePlans.Squares.Request.Gifts[0] with { Due = new DateOnly(2027, 6, 19) }],
    })).Problem;

    private static readonly WorkCalendar Made = CalendarBench.Calendar(Problem);

    [Fact]
    public void Minutes_become_moments_by_the_shops_clock()
    {
        // Tuesday half past six in Dublin: the jointer is not needed for pieces worked by hand, so setting up hand tools comes first.
        var first = Made.Tasks[0];

        Assert.Equal("2027-05-04T18:35:00+01:00", $"{first.Start:yyyy-MM-ddTHH:mm:sszzz}");
        Assert.Equal((first.Task.Minutes, "Europe/Dublin", "2027-05-03T13:00"), ((int)(first.End - first.Start).TotalMinutes, Made.TimeZone, $"{Made.Start:yyyy-MM-ddTHH:mm}"));
        var glued = Made.Tasks.Single(t => t.Task.GlueUp == "G1");
        Assert.Equal(TimeSpan.FromMinutes(glued.Task.WaitMinutes), glued.FreeAgain - glued.End);
        Assert.Equal(Made.Tasks.OrderBy(t => t.Start), Made.Tasks);
        Assert.Equal(Problem.Schedule.Tasks.Length, Made.Tasks.Length);
    }

    [Fact]
    public void Every_task_is_on_one_evening_and_within_it()
    {
        Assert.Equal(Made.Tasks.Select(t => t.Task.Id), Made.Evenings.SelectMany(e => e.Tasks));
        Assert.All(Made.Evenings, e => Assert.All(Made.Tasks.Where(t => e.Tasks.Contains(t.Task.Id)), t => Assert.True(t.Start >= e.Start && t.End <= e.End)));
        Assert.All(Made.Settings, s => Assert.Equal(s.Setting.Minutes, (int)(s.Ready - s.Start).TotalMinutes));
    }

    [Fact]
    public void A_gift_has_whole_days_of_slack_or_is_late()
    {
        var gift = Assert.Single(Made.Gifts);
        var last = Made.Tasks[^1];

        Assert.Equal(last.End, gift.ReadyAt);
        Assert.Equal(DateTimeOffset.Parse("2027-06-18T23:00Z"), gift.DueAt);
        Assert.Equal((int)Math.Floor((gift.DueAt!.Value - last.End).TotalDays), gift.SlackDays);
        Assert.False(gift.IsLate);

        // The same schedule for a gift that was due on the evening before: less than a day late is a day, rounded down.
        var due = DateOnly.FromDateTime(last.End.DateTime);
        var late = Assert.Single(WorkCalendar.Of(Problem with { Request = Problem.Request with { Gifts = [ExamplePlans.Squares.Request.Gifts[0] with { Due = due }] } }, Made.Schedule).Gifts);
        Assert.Equal((-1, true), (late.SlackDays, late.IsLate));
    }

    [Fact]
    public void A_calendar_comes_back_from_its_text_as_it_was()
    {
        var text = CalendarJson.Write(Made);

        var read = CalendarJson.Read(text);

        Assert.Equal(text, CalendarJson.Write(read));
        Assert.Equal(Made.Tasks.Select(t => (t.Task.Id, t.Start, t.FreeAgain)), read.Tasks.Select(t => (t.Task.Id, t.Start, t.FreeAgain)));
        Assert.Equal(ExamplePlans.Squares.Fingerprint, read.Fingerprint);
        Assert.Contains("\"start\": \"2027-05-04T18:35:00+01:00\"", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Tonight_has_settings_before_tasks_and_what_dries()
    {
        var gluing = Made.Evenings.Single(e => e.Tasks.Contains("glue-up/G1"));

        var tonight = Tonight.Of(Made, gluing.Start.AddHours(-3))!;

        Assert.Equal((gluing.Start, false), (tonight.Start, tonight.IsNow));
        var lines = WorkLines.Of(Made, gluing);
        var glue = lines.Index().Single(l => l.Item.Tasks.Any(t => t.Task.Id == "glue-up/G1")).Index;
        Assert.Equal(("Clamps: glue up", true), (lines[glue - 1].Title, lines[glue - 1].IsSetUp));
        Assert.Equal(lines[glue].Start, lines[glue - 1].End);
        Assert.Equal(new TaskClamps(Length.FromInches(21, 4), 3, 60), tonight.Clamps);
        Assert.Contains("white or yellow glue (PVA)", tonight.LayOut);
        Assert.Equal(["glue-up/G1"], tonight.Overnight.Select(t => t.Task.Id));
        Assert.Superset(new HashSet<string> { "W1", "W2", "M1", "M2" }, tonight.Pieces.ToHashSet());

        // It is cured before the next evening; in a colder shop it would not be.
        var glued = Made.Tasks.Single(t => t.Task.GlueUp == "G1");
        Assert.Empty(Tonight.Of(Made, gluing.End)!.StillDrying);
        var cold = Made with { Tasks = Made.Tasks.Replace(glued, glued with { FreeAgain = glued.FreeAgain.AddHours(2) }) };
        Assert.Equal(["glue-up/G1"], Tonight.Of(cold, gluing.End)!.StillDrying.Select(t => t.Task.Id));
        Assert.True(Tonight.Of(Made, gluing.Start.AddMinutes(5))!.IsNow);
        Assert.Null(Tonight.Of(Made, Made.Evenings[^1].End));
    }

    [Fact]
    public void Clamps_are_laid_out_for_as_many_as_hold_at_the_same_time()
    {
        var first = Made.Tasks.Single(t => t.Task.GlueUp == "G1");
        // Half an hour after the first, whose three hold for an hour, and again when they are off.
        var calendar = Made with { Tasks = [first, After(first, 30, 4, 6), After(first, 90, 2, 5)], Evenings = [new(first.Start, first.Start.AddHours(3), ["glue-up/G1", "30", "90"])] };

        Assert.Equal(new TaskClamps(Length.FromInches(6), 7, 60), Tonight.Of(calendar, first.Start)!.Clamps);
        Assert.Null(Tonight.Of(Made, first.Start.AddHours(12))!.Clamps);

        static CalendarTask After(CalendarTask first, int minutes, int clamps, int inches) => first with
        {
            Task = first.Task with { Id = $"{minutes}", Clamps = new(Length.FromInches(inches), clamps, 60) },
            Start = first.Start.AddMinutes(minutes),
            End = first.End.AddMinutes(minutes),
        };
    }

    [Fact]
    public void What_is_bought_is_needed_when_the_first_rods_are_cut_or_holes_drilled()
    {
        var drill = Made.Tasks[0] with { Task = Made.Tasks[0].Task with { Operation = Operation.Drill, Gifts = ["Elm"] }, Start = Made.Start.AddDays(2) };
        var rods = drill with { Task = drill.Task with { Operation = Operation.CutRods }, Start = Made.Start.AddDays(1) };
        var calendar = Made with
        {
            Tasks = [rods, drill, drill with { Start = Made.Start.AddDays(3) }],
            Shopping =
            [
                new("drill bit", 1, Length.FromInches(1, 2), Length.Zero, "Oak"), new("drill bit", 1, Length.FromInches(7, 16), Length.Zero, "Elm"),
                new("birch dowel rod", 1, Length.FromInches(1, 4), Length.FromInches(36), "Oak, Elm"),
            ],
        };

        var list = calendar.BuyBy();

        Assert.Equal([rods.Start, drill.Start, (DateTimeOffset?)null], list.Select(b => b.Before));
        Assert.Equal(["birch dowel rod", "drill bit", "drill bit"], list.Select(b => b.Item.What));
    }

    [Fact]
    public void A_schedule_of_another_problem_is_a_mistake()
    {
        Assert.Throws<ArgumentException>(() => WorkCalendar.Of(Problem, Made.Schedule with { Tasks = Made.Schedule.Tasks[1..] }));
        Assert.Throws<ArgumentException>(() => WorkCalendar.Of(Problem, Made.Schedule with { Tasks = [.. Made.Schedule.Tasks, new("other", 0, 1)] }));
    }

    [Fact]
    public void An_outcome_names_tasks_as_the_shop_does()
    {
        var outcome = CalendarOutcome.Of(Problem, new ScheduleOutcome.Impossible([new("glue-up/G1", "90 min", "a window of 100 min"), new("Ida", "a", "b")]));

        Assert.Equal(["Glue up G1: Ida", "Ida"], Assert.IsType<CalendarOutcome.Impossible>(outcome).Reasons.Select(r => r.Where));
        Assert.Equal(Made.Tasks.Length, Assert.IsType<CalendarOutcome.Dated>(CalendarOutcome.Of(Problem, new ScheduleOutcome.Scheduled(Made.Schedule))).Calendar.Tasks.Length);
        Assert.IsType<CalendarOutcome.Unfinished>(CalendarOutcome.Of(Problem, new ScheduleOutcome.Unfinished()));
    }
}
