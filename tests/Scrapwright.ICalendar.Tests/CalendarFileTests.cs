using System.Globalization;
using System.Text;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Shops;

namespace Scrapwright.ICalendar.Tests;

/// <summary>The file against RFC 5545 (sections named beside each check), read once by its rules alone and once by the library.</summary>
public sealed class CalendarFileTests
{
    private const string Workshop = "Shed; by the pond, \\left";

    private static readonly DateTimeOffset Now = DateTimeOffset.Parse("2027-03-20T10:11:12.345+00:00", CultureInfo.InvariantCulture);

    // Dublin puts its clock forward on 28 March 2027: directive 2000/84/EC, last Sunday of March.
    private static readonly WorkCalendar Made = Calendar(["2027-03-27T18:30+00:00", "2027-03-30T18:30+01:00"], ReadyOn("2027-03-31T18:00+01:00"));

    [Fact]
    public void Lines_are_folded_at_75_octets_and_come_back_whole()
    {
        var file = new IcsText(CalendarFile.Write(Made, Workshop, Now));

        // 3.1: lines SHOULD NOT be longer than 75 octets, the line break not counted; no character may be cut in two for good.
        Assert.All(file.Lines, line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 1, 75));
        Assert.Contains(file.Components("VEVENT"), e => IcsText.Plain(IcsText.Value(e, "DESCRIPTION")).Contains("Weißtannenästchen für größere Übungsstücke, Zürich; Ölfläschchen \\ Möbelöl", StringComparison.Ordinal));
    }

    [Fact]
    public void It_has_all_that_a_calendar_must_have()
    {
        var file = new IcsText(CalendarFile.Write(Made, Workshop, Now));

        // 3.6 and 3.7: PRODID and VERSION exactly once.
        var calendar = Assert.Single(file.Components("VCALENDAR"));
        Assert.Equal("2.0", IcsText.Value(calendar, "VERSION"));
        Assert.NotEmpty(IcsText.Value(calendar, "PRODID"));
        Assert.Equal("BEGIN:VCALENDAR", file.ContentLines[0]);
        // 3.8.3.1: every TZID that is used is explained in the same file.
        var zone = Assert.Single(file.Components("VTIMEZONE"));
        Assert.Equal("Europe/Dublin", IcsText.Value(zone, "TZID"));
        Assert.NotEmpty(file.Components("STANDARD"));
        // 3.6.1: UID and DTSTAMP in every event, DTSTAMP in UTC (3.8.7.2); no UID twice (3.8.4.7).
        var events = file.Components("VEVENT");
        Assert.Equal(3, events.Count);
        Assert.Equal(events.Count, events.Select(e => IcsText.Value(e, "UID")).Distinct().Count());
        Assert.All(events, e => Assert.Equal("20270320T101112Z", IcsText.Value(e, "DTSTAMP")));
    }

    [Fact]
    public void Evenings_stand_in_the_shops_time_on_both_sides_of_a_change_of_the_clock()
    {
        var text = CalendarFile.Write(Made, Workshop, Now);
        var events = new IcsText(text).Components("VEVENT").Where(e => IcsText.Parameters(e, "DTSTART") == ";TZID=Europe/Dublin").ToArray();

        Assert.Equal(["20270327T183500", "20270330T183500"], events.Select(e => IcsText.Value(e, "DTSTART")));
        Assert.Equal(["20270327T191500", "20270330T191500"], events.Select(e => IcsText.Value(e, "DTEND")));
        // The library, which knows the zone by itself: 18:35 is 18:35 UTC before the change and 17:35 after it.
        var read = Ical.Net.Calendar.Load(text)!.Events.Where(e => e.Start!.HasTime).OrderBy(e => e.Start!.AsUtc);
        Assert.Equal(["2027-03-27T18:35", "2027-03-30T17:35"], read.Select(e => e.Start!.AsUtc.ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture)));
        // 3.6.5, and the directive: from the last Sunday of March on the clock is an hour ahead of UTC.
        Assert.Contains(
            new IcsText(text).Components("DAYLIGHT").Concat(new IcsText(text).Components("STANDARD")),
            o => IcsText.Value(o, "TZOFFSETTO") == "+0100" && IcsText.Value(o, "RRULE").Contains("BYDAY=-1SU", StringComparison.Ordinal) && IcsText.Value(o, "RRULE").Contains("BYMONTH=3", StringComparison.Ordinal));
    }

    [Fact]
    public void An_evening_says_what_to_do_and_when_and_reminds_an_hour_before()
    {
        var file = new IcsText(CalendarFile.Write(Made, Workshop, Now));
        var evening = file.Components("VEVENT").First(e => IcsText.Value(e, "DTSTART") == "20270327T183500");

        Assert.StartsWith(Workshop + ": Glue up; ", IcsText.Plain(IcsText.Value(evening, "SUMMARY")), StringComparison.Ordinal);
        Assert.Equal(["18:35 Glue up", "18:50 Weißtannenästchen für größere Übungsstücke, Zürich; Ölfläschchen \\ Möbelöl"], IcsText.Plain(IcsText.Value(evening, "DESCRIPTION")).Split('\n'));
        // 3.6.6: an alarm that shows itself has ACTION, DESCRIPTION and TRIGGER; 3.3.6: an hour before.
        Assert.All(file.Components("VALARM"), alarm => Assert.Equal(("DISPLAY", true), (IcsText.Value(alarm, "ACTION"), IcsText.Value(alarm, "TRIGGER") is "-PT1H" or "-PT60M")));
        Assert.Equal(2, file.Components("VALARM").Count);
        Assert.Empty(new IcsText(CalendarFile.Write(Made, Workshop, Now, reminderMinutes: null)).Components("VALARM"));
    }

    [Fact]
    public void A_gift_that_is_due_has_a_day_of_its_own_that_takes_nobodys_time()
    {
        var due = new IcsText(CalendarFile.Write(Made, Workshop, Now)).Components("VEVENT").Single(e => IcsText.Parameters(e, "DTSTART").Contains("VALUE=DATE", StringComparison.Ordinal));

        Assert.Equal(("20270402", "20270403", "TRANSPARENT"), (IcsText.Value(due, "DTSTART"), IcsText.Value(due, "DTEND"), IcsText.Value(due, "TRANSP")));
        Assert.Equal("Ready Wednesday 31 March\\, 18:00.", IcsText.Value(due, "DESCRIPTION"));

        var late = new IcsText(CalendarFile.Write(Calendar(["2027-03-27T18:30+00:00"], ReadyOn("2027-04-03T18:00+01:00")), Workshop, Now)).Components("VEVENT").Single(e => IcsText.Parameters(e, "DTSTART").Contains("VALUE=DATE", StringComparison.Ordinal));
        Assert.Equal("LATE: ready only Saturday 3 April\\, 18:00.", IcsText.Value(late, "DESCRIPTION"));
    }

    [Fact]
    public void Read_in_again_it_changes_what_is_there()
    {
        // The next day the second evening is gone, another has come, and the first has begun and so starts later.
        var next = Calendar(["2027-03-27T19:00+00:00", "2027-04-01T18:30+01:00"], ReadyOn("2027-04-01T20:00+01:00"), end: "2027-03-27T20:30+00:00");

        var first = new IcsText(CalendarFile.Write(Made, Workshop, Now)).Components("VEVENT");
        var second = new IcsText(CalendarFile.Write(next, Workshop, Now.AddDays(1), Made)).Components("VEVENT");

        // 3.8.4.7 and 3.8.7.4: the same UID with a higher SEQUENCE is the same event, changed.
        string[] Uids(IEnumerable<IReadOnlyList<string>> events) => [.. events.Select(e => IcsText.Value(e, "UID"))];
        Assert.Empty(Uids(first).Except(Uids(second)));
        Assert.Single(Uids(second).Except(Uids(first)));
        Assert.True(Sequence(second[0]) > Sequence(first[0]));
        // 3.8.1.11
        var cancelled = Assert.Single(second, e => e.Any(l => l == "STATUS:CANCELLED"));
        Assert.Equal(IcsText.Value(first[1], "UID"), IcsText.Value(cancelled, "UID"));
        // What is over is not cancelled: it was.
        Assert.DoesNotContain(new IcsText(CalendarFile.Write(next, Workshop, DateTimeOffset.Parse("2027-03-31T00:00Z", CultureInfo.InvariantCulture), Made)).ContentLines, l => l == "STATUS:CANCELLED");
    }

    [Fact]
    public void Two_workshops_share_no_event()
    {
        var one = new IcsText(CalendarFile.Write(Made, "Shed", Now)).Components("VEVENT").Select(e => IcsText.Value(e, "UID"));
        var other = new IcsText(CalendarFile.Write(Made, "Barn", Now)).Components("VEVENT").Select(e => IcsText.Value(e, "UID"));

        Assert.Empty(one.Intersect(other));
    }

    [Fact]
    public void A_calendar_without_an_evening_is_one_still()
    {
        var file = new IcsText(CalendarFile.Write(Calendar([], new CalendarGift("squares", null, null, null, null)), Workshop, Now));

        Assert.Empty(file.Components("VEVENT"));
        Assert.Single(file.Components("VCALENDAR"));
    }

    private static int Sequence(IReadOnlyList<string> component) => int.Parse(IcsText.Value(component, "SEQUENCE"), CultureInfo.InvariantCulture);

    private static CalendarGift ReadyOn(string moment)
    {
        var ready = DateTimeOffset.Parse(moment, CultureInfo.InvariantCulture);
        var due = DateTimeOffset.Parse("2027-04-02T00:00+01:00", CultureInfo.InvariantCulture);
        return new("squares", new DateOnly(2027, 4, 2), due, ready, (int)Math.Floor((due - ready).TotalDays));
    }

    // Each evening has a setting of five minutes, gluing, and something with a long name; it ends two hours after its start unless told otherwise.
    private static WorkCalendar Calendar(string[] evenings, CalendarGift gift, string? end = null)
    {
        var tasks = new List<CalendarTask>();
        var windows = new List<CalendarEvening>();
        foreach (var (i, text) in evenings.Index())
        {
            var start = DateTimeOffset.Parse(text, CultureInfo.InvariantCulture);
            CalendarTask Task(string id, string title, int from, int minutes) => new(
                new WorkTask
                {
                    Id = $"{id}{i}",
                    Title = title,
                    Operation = Operation.GlueUp,
                    Station = Station.Clamps,
                    Gifts = ["squares"],
                    Steps = [1],
                    Pieces = [],
                    Minutes = minutes,
                    LeastMinutes = minutes,
                    MostMinutes = minutes,
                    Setting = id,
                },
                start.AddMinutes(from), start.AddMinutes(from + minutes), start.AddMinutes(from + minutes));
            CalendarTask[] both = [Task("glue", "Glue up", 5, 15), Task("more", "Weißtannenästchen für größere Übungsstücke, Zürich; Ölfläschchen \\ Möbelöl", 20, 25)];
            tasks.AddRange(both);
            windows.Add(new(start, i == 0 && end is not null ? DateTimeOffset.Parse(end, CultureInfo.InvariantCulture) : start.AddHours(2), [.. both.Select(t => t.Task.Id)]));
        }

        return new()
        {
            Fingerprint = "none",
            Start = Now,
            TimeZone = "Europe/Dublin",
            Hours = new WorkHours { TimeZone = "Europe/Dublin" },
            Problem = new() { HorizonMinutes = 1, Resources = [], Tasks = [] },
            Schedule = new() { Tasks = [] },
            Tasks = [.. tasks],
            Settings = [],
            Gifts = [gift],
            Evenings = [.. windows],
        };
    }
}
