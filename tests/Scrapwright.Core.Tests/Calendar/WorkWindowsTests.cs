using Scrapwright.Core.Calendar;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Calendar;

public sealed class WorkWindowsTests
{
    private static readonly TimeZoneInfo Utc = TimeZoneInfo.Utc;

    /// <summary>Days on which clocks change, with the moment of the change in UTC and how many minutes the clock is put forward (or, below zero, back).</summary>
    public static TheoryData<string, string, string, int> Changes => new()
    {
        // [SummerTime2000], articles 2 and 3: the last Sunday in March and in October at 1 a.m. UTC, in every state of the Union alike.
        { "Europe/Dublin", "2027-03-28", "2027-03-28T01:00Z", 60 },
        { "Europe/Dublin", "2027-10-31", "2027-10-31T01:00Z", -60 },
        { "Europe/Helsinki", "2027-03-28", "2027-03-28T01:00Z", 60 },
        { "Europe/Helsinki", "2027-10-31", "2027-10-31T01:00Z", -60 },
        // [UniformTime2005]: the second Sunday of March and the first of November at 2 a.m. by the clock, which is five hours and then four behind UTC in New York.
        { "America/New_York", "2027-03-14", "2027-03-14T07:00Z", 60 },
        { "America/New_York", "2027-11-07", "2027-11-07T06:00Z", -60 },
        // From memory, New Zealand Daylight Time Order 2007: the last Sunday of September at 2 a.m. standard time, until the first of April at 3 a.m. daylight time; UTC + 12 h.
        { "Pacific/Auckland", "2027-09-26", "2027-09-25T14:00Z", 60 },
        { "Pacific/Auckland", "2027-04-04", "2027-04-03T14:00Z", -60 },
        // From memory: Lord Howe Island keeps UTC + 10:30, in summer + 11, with the dates of New South Wales: first Sundays of October and April, at 2 a.m. by the clock.
        { "Australia/Lord_Howe", "2027-10-03", "2027-10-02T15:30Z", 30 },
        { "Australia/Lord_Howe", "2027-04-04", "2027-04-03T15:00Z", -30 },
    };

    [Theory]
    [MemberData(nameof(Changes))]
    public void A_window_over_a_change_of_the_clock_is_longer_or_shorter_by_it(string zone, string day, string change, int forward)
    {
        var date = DateOnly.Parse(day);
        var windows = WorkWindows.Of(Always("00:30", "06:00"), Zone(zone), At(change).AddDays(-2), 5);

        var local = windows.All.Select(w => (Day: DateOnly.FromDateTime(windows.At(w.Start).DateTime), w.Minutes)).ToArray();

        Assert.Equal(330 - forward, local.Single(w => w.Day == date).Minutes);
        Assert.All(local.Where(w => w.Day != date && w.Day > local[0].Day), w => Assert.Equal(330, w.Minutes));
        Assert.Contains(windows.All, w => w.Start < windows.MinuteOf(At(change)) && windows.MinuteOf(At(change)) < w.End);
    }

    [Theory]
    [MemberData(nameof(Changes))]
    public void Every_time_of_a_day_is_the_first_moment_at_which_the_clock_shows_it_or_a_later_one(string zone, string day, string change, int forward)
    {
        // The clock by itself, minute by minute from the published rule: not what the library says of the zone.
        var date = DateOnly.Parse(day);
        var moment = At(change);
        var midnight = date.ToDateTime(TimeOnly.MinValue);
        var offsetBefore = Zone(zone).GetUtcOffset(moment.AddHours(-1));
        DateTime Shown(DateTimeOffset utc) => utc.UtcDateTime + offsetBefore + (utc >= moment ? TimeSpan.FromMinutes(forward) : TimeSpan.Zero);

        for (var minute = 0; minute < 24 * 60; minute += 5)
        {
            var asked = midnight.AddMinutes(minute);
            var expected = Enumerable.Range(-26 * 60, 52 * 60).Select(m => moment.AddMinutes(m)).First(utc => Shown(utc) >= asked);

            Assert.Equal(expected.UtcDateTime, WallClock.First(Zone(zone), date, TimeOnly.FromDateTime(asked)).UtcDateTime);
        }
    }

    [Fact]
    public void Hours_within_a_gap_are_none_and_hours_from_a_gap_begin_with_the_change()
    {
        // [SummerTime2000]: in Dublin 01:00 is followed by 02:00.
        var zone = Zone("Europe/Dublin");

        Assert.Empty(WorkWindows.Of(Always("01:15", "01:45"), zone, At("2027-03-28T00:00Z"), 1).All);
        var window = Assert.Single(WorkWindows.Of(Always("01:30", "03:00"), zone, At("2027-03-28T00:00Z"), 1).All);
        Assert.Equal((60, 120), (window.Start, window.End));
    }

    [Fact]
    public void Hours_are_told_apart_from_the_change_when_it_is_outside_of_them()
    {
        var windows = WorkWindows.Of(Always("18:30", "21:30"), Zone("Europe/Dublin"), At("2027-03-27T12:00Z"), 3);

        // 18:30 by UTC on the day before, 17:30 after: 23 hours lie between.
        Assert.Equal([(390, 570), (390 + (23 * 60), 570 + (23 * 60)), (390 + (47 * 60), 570 + (47 * 60))], windows.All.Select(w => (w.Start, w.End)));
        Assert.Equal([0, 60, 60], windows.All.Select(w => (int)windows.At(w.Start).Offset.TotalMinutes));
        Assert.All(windows.All, w => Assert.Equal(new TimeOnly(18, 30), TimeOnly.FromDateTime(windows.At(w.Start).DateTime)));
    }

    [Fact]
    public void The_usual_week_has_three_evenings_and_a_Saturday_and_machines_stop_at_eight()
    {
        // 2027-06-07 is a Monday.
        var windows = WorkWindows.Of(new WorkHours(), Utc, At("2027-06-07T00:00Z"), 7);

        Assert.Equal(
            ["Tuesday 18:30-21:30", "Wednesday 18:30-21:30", "Thursday 18:30-21:30", "Saturday 09:00-12:00", "Saturday 13:00-17:00"],
            windows.All.Select(w => $"{windows.At(w.Start):dddd HH:mm}-{windows.At(w.End):HH:mm}"));
        Assert.Equal(
            ["18:30-20:00", "18:30-20:00", "18:30-20:00", "09:00-12:00", "13:00-17:00"],
            windows.Machines.Select(w => $"{windows.At(w.Start):HH:mm}-{windows.At(w.End):HH:mm}"));
        Assert.Equal(7 * 1440, windows.HorizonMinutes);
    }

    [Fact]
    public void Ranges_that_overlap_or_touch_are_one_also_over_midnight()
    {
        var hours = new WorkHours
        {
            Week = [new(DayOfWeek.Monday, [Range("20:00", "22:30"), Range("22:00", "24:00")]), new(DayOfWeek.Tuesday, [Range("00:00", "01:00"), Range("01:00", "02:00"), Range("05:00", "04:00")])],
            QuietFrom = null,
            QuietUntil = null,
        };

        var windows = WorkWindows.Of(hours, Utc, At("2027-06-07T00:00Z"), 3);

        Assert.Equal([new ScheduleWindow(20 * 60, 26 * 60)], windows.All.AsEnumerable());
        Assert.Equal(windows.All.AsEnumerable(), windows.Machines);
    }

    [Fact]
    public void The_later_of_two_exceptions_counts_and_an_empty_one_is_away()
    {
        var hours = Always("18:00", "19:00") with
        {
            Exceptions = [new(new(2027, 6, 8), new(2027, 6, 10), [], "away"), new(new(2027, 6, 9), new(2027, 6, 9), [Range("10:00", "11:30")], "back for a morning")],
        };

        var windows = WorkWindows.Of(hours, Utc, At("2027-06-07T00:00Z"), 5);

        Assert.Equal(["07 18:00", "09 10:00", "11 18:00"], windows.All.Select(w => $"{windows.At(w.Start):dd HH:mm}"));
    }

    [Fact]
    public void What_is_over_is_cut_off_and_a_minute_that_has_begun_is_over()
    {
        var windows = WorkWindows.Of(Always("18:00", "20:00"), Utc, At("2027-06-07T18:30:20Z"), 2);

        Assert.Equal(At("2027-06-07T18:31Z"), windows.Start);
        Assert.Equal(new ScheduleWindow(0, 89), windows.All[0]);
        Assert.Equal(2, windows.All.Length);
        Assert.Equal((-1, 0), (windows.MinuteOf(At("2027-06-07T18:30:59Z")), windows.MinuteOf(At("2027-06-07T18:31:59Z"))));
    }

    [Fact]
    public void Months_cut_windows_at_midnight_by_the_clock_on_the_wall()
    {
        var hours = Always("00:00", "24:00") with { QuietFrom = null, QuietUntil = null };
        var windows = WorkWindows.Of(hours, Zone("America/New_York"), At("2027-02-20T12:00Z"), 80);

        var march = Assert.Single(windows.InMonths(windows.All, month => month == 3));

        // Midnight in New York is 5:00 by UTC, and 4:00 once the clock is put forward.
        Assert.Equal(At("2027-03-01T05:00Z"), windows.At(march.Start));
        Assert.Equal(At("2027-04-01T04:00Z"), windows.At(march.End));
        Assert.Equal([2, 3, 4, 5], windows.MonthsUntil(int.MaxValue));
        Assert.Equal([2], windows.MonthsUntil(0));
    }

    [Theory]
    [InlineData("Europe/Dublin", "Europe/Dublin")]
    [InlineData(" America/Argentina/Buenos_Aires ", "America/Argentina/Buenos_Aires")]
    [InlineData("", "UTC")]
    [InlineData("Europe/Dubln", null)]
    [InlineData("../../etc/passwd", null)]
    [InlineData("/etc/localtime", null)]
    [InlineData("Europe/Dublin\n", "Europe/Dublin")]
    [InlineData("Europe", null)]
    public void A_zone_is_found_by_its_name_or_not_at_all(string name, string? expected) => Assert.Equal(expected, ShopZones.Find(name, Utc)?.Id);

    private static WorkHours Always(string from, string until) => new() { Week = [.. Enum.GetValues<DayOfWeek>().Select(d => new DayHours(d, [Range(from, until)]))] };

    private static HourRange Range(string from, string until) => new(TimeOnly.Parse(from), until == "24:00" ? TimeOnly.MinValue : TimeOnly.Parse(until));

    private static TimeZoneInfo Zone(string name) => ShopZones.Find(name, Utc)!;

    private static DateTimeOffset At(string text) => DateTimeOffset.Parse(text);
}
