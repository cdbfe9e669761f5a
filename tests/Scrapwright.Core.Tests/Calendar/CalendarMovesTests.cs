using System.Collections.Immutable;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Audit;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Plans;

namespace Scrapwright.Core.Tests.Calendar;

public sealed class CalendarMovesTests
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
    private static readonly ShopClock Clock = ShopClock.Of(Made.Start, Problem.Schedule.HorizonMinutes, Problem.Windows.Zone);

    [Fact]
    public void A_clock_without_a_zone_shows_what_the_zone_does()
    {
        Assert.NotEmpty(Clock.Changes);
        for (var minute = 0; minute < Problem.Schedule.HorizonMinutes; minute += 97)
        {
            Assert.Equal($"{Problem.Windows.At(minute):O}", $"{Clock.At(minute):O}");
            Assert.Equal(minute, Clock.MinuteOf(Clock.At(minute)));
        }

        // Where the clock is put back, in the minute before and after.
        Assert.All(Clock.Changes.SelectMany(c => new[] { c.Minute - 1, c.Minute }), m => Assert.Equal($"{Problem.Windows.At(m):O}", $"{Clock.At(m):O}"));
    }

    [Fact]
    public void A_calendar_with_its_own_schedule_is_itself()
    {
        Assert.Equal(CalendarJson.Write(Made), CalendarJson.Write(Made.With(Made.Problem, Made.Schedule, Clock)));
        Assert.Throws<ArgumentException>(() => Made.With(Made.Problem, Made.Schedule with { Tasks = [] }, Clock));
    }

    [Fact]
    public void A_task_moved_later_takes_along_what_follows_and_the_audit_agrees()
    {
        var link = Made.Problem.Links[0];

        var moved = Dated(CalendarMoves.ToNextWindow(Made, Clock, [link.Before], isLater: true, Start));

        Assert.True(StartOf(moved, link.Before) > StartOf(Made, link.Before));
        Assert.Empty(ScheduleAudit.Check(moved.Problem, moved.Schedule));
        var others = CalendarMoves.AlsoMoved(Made, moved, [link.Before]);
        Assert.Contains(others, t => t.Task.Id == link.After);
        Assert.All(others, t => Assert.NotEqual(StartOf(Made, t.Task.Id), t.Start));
        Assert.Equal(Made.Tasks.Length, moved.Evenings.Sum(e => e.Tasks.Length));
    }

    [Fact]
    public void Later_and_then_earlier_from_there_comes_back_to_the_same_window()
    {
        var task = Made.Tasks[^1].Task.Id;
        var later = StartOf(Dated(CalendarMoves.ToNextWindow(Made, Clock, [task], isLater: true, Start)), task);

        var back = Dated(CalendarMoves.ToNextWindow(Made, Clock, [task], isLater: false, Start, later));

        Assert.Equal(Made.Evenings.Single(e => e.Tasks.Contains(task)).Start, back.Evenings.Single(e => e.Tasks.Contains(task)).Start);
    }

    [Fact]
    public void Nothing_goes_before_what_it_waits_for_or_before_now()
    {
        var first = Made.Tasks[0].Task.Id;
        var late = Made.Problem.Links[0].After;

        Assert.IsType<CalendarOutcome.Impossible>(CalendarMoves.ToNextWindow(Made, Clock, [first], isLater: false, Start));
        var impossible = Assert.IsType<CalendarOutcome.Impossible>(CalendarMoves.Move(Made, Clock, [late], Clock.MinuteOf(Made.Tasks[0].Start)));
        Assert.NotEmpty(impossible.Reasons);
        var after = Start.AddDays(8);
        Assert.True(StartOf(Dated(CalendarMoves.ToNextWindow(Made, Clock, [Made.Tasks[^1].Task.Id], isLater: true, after)), Made.Tasks[^1].Task.Id) > after);
    }

    [Fact]
    public void A_day_off_has_no_place()
    {
        var task = Made.Tasks[^1];
        var sunday = DateOnly.FromDateTime(task.Start.DateTime);
        while (sunday.DayOfWeek != DayOfWeek.Sunday) sunday = sunday.AddDays(1);

        Assert.IsType<CalendarOutcome.Impossible>(CalendarMoves.ToDay(Made, Clock, [task.Task.Id], sunday, Start));
        Assert.Equal(sunday.AddDays(2), DateOnly.FromDateTime(StartOf(Dated(CalendarMoves.ToDay(Made, Clock, [task.Task.Id], sunday.AddDays(2), Start)), task.Task.Id).DateTime));
    }

    [Fact]
    public void Tasks_moved_together_stand_one_after_the_other()
    {
        // The last task once more.
        var twice = Twice(Made.Tasks[^1]);
        ImmutableArray<string> ids = [Made.Tasks[^1].Task.Id, "again"];

        var moved = Dated(CalendarMoves.ToNextWindow(twice, Clock, ids, isLater: true, Start));

        var times = ids.Select(id => moved.Tasks.Single(t => t.Task.Id == id)).ToArray();
        Assert.True(times[0].Start > ids.Min(id => StartOf(twice, id)));
        Assert.Equal(times[0].End, times[1].Start);
        Assert.Empty(ScheduleAudit.Check(moved.Problem, moved.Schedule));
    }

    [Fact]
    public void What_runs_on_at_one_setting_is_one_line_unless_it_is_being_moved()
    {
        var task = Made.Tasks.First(t => t.Task.Operation == Operation.EdgeJoint);
        var evening = Made.Evenings.Single(e => e.Tasks.Contains(task.Task.Id));
        var other = task with { Task = task.Task with { Id = "again", Gifts = ["Ida", "Elm"] }, Start = task.End, End = task.End.AddMinutes(4) };
        var calendar = Made with { Tasks = [.. Made.Tasks.Where(t => t.Start < other.Start), other], Settings = [] };
        evening = evening with { Tasks = [.. calendar.Tasks.Where(t => t.Start >= evening.Start && t.End <= evening.End).Select(t => t.Task.Id)] };

        var joined = WorkLines.Of(calendar, evening);

        var line = joined.Single(l => l.Tasks.Any(t => t.Task.Id == "again"));
        Assert.Equal([task.Task.Id, "again"], line.Tasks.Select(t => t.Task.Id));
        Assert.Equal((task.Start, other.End), (line.Start, line.End));
        Assert.Equal($"Joint edges: {task.Task.Pieces.Length * 2} pieces, for {string.Join(", ", task.Task.Gifts.Union(["Ida", "Elm"]))}", line.Title);
        Assert.Single(WorkLines.Of(calendar, evening, ["again"]).Single(l => l.Tasks.Any(t => t.Task.Id == "again")).Tasks);
    }

    [Fact]
    public void Lines_hold_every_task_once_and_settings_before_them()
    {
        foreach (var evening in Made.Evenings)
        {
            var lines = WorkLines.Of(Made, evening);
            Assert.Equal(evening.Tasks, lines.SelectMany(l => l.Tasks).Select(t => t.Task.Id));
            Assert.Equal(lines.OrderBy(l => l.Start), lines);
            Assert.Equal(Made.Settings.Count(s => s.Setting.Minutes > 0 && s.Start >= evening.Start && s.Start < evening.End), lines.Count(l => l.IsSetUp));
        }
    }

    [Fact]
    public void Marks_are_set_and_taken_off_and_the_first_moment_counts()
    {
        var marks = new CalendarMarks().WithDone(["a", "b", "a"], Start).WithDone(["a"], Start.AddDays(1)).WithPinned([new("c", Start)]).WithPinned([new("c", Start.AddDays(2))]);

        Assert.Equal([new DoneTask("a", Start), new DoneTask("b", Start)], marks.Done);
        Assert.Equal([new PinnedTask("c", Start.AddDays(2))], marks.Pinned);
        Assert.True(marks.WithoutDone(["a", "b"]).WithoutPinned(["c"]).AreNone);
    }

    private static WorkCalendar Twice(CalendarTask task)
    {
        var facts = Made.Problem.Tasks.Single(t => t.Id == task.Task.Id);
        var problem = Made.Problem with { Tasks = [.. Made.Problem.Tasks, facts with { Id = "again" }] };
        var schedule = Assert.IsType<ScheduleOutcome.Scheduled>(ScheduleBuilder.InOrder(problem, [.. Made.Tasks.Select(t => t.Task.Id)])).Schedule;
        return (Made with { Tasks = [.. Made.Tasks, task with { Task = task.Task with { Id = "again" } }] }).With(problem, schedule, Clock);
    }

    private static WorkCalendar Dated(CalendarOutcome outcome) => Assert.IsType<CalendarOutcome.Dated>(outcome).Calendar;

    private static DateTimeOffset StartOf(WorkCalendar calendar, string task) => calendar.Tasks.Single(t => t.Task.Id == task).Start;
}
