using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Scrapwright.Core.Calendar;

namespace Scrapwright.ICalendar;

/// <summary>
/// A calendar as an iCalendar file (RFC 5545), for the calendar on a phone: one event for every evening with what to do in it, and a day for every gift that is due.
/// Evenings and gifts have the same UID in every calendar of a workshop, so that reading the next file in changes them instead of adding more.
/// </summary>
public static class CalendarFile
{
    /// <summary>The file's name beside a plan.</summary>
    public const string Name = "calendar.ics";

    private const int MostTitles = 3;

    // Sequence numbers have to grow from file to file and fit into 32 bits: minutes since this day do for four thousand years.
    private static readonly DateTimeOffset FirstSequence = new(2020, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The file's text, lines of at most 75 octets that end in CR LF.</summary>
    /// <param name="calendar">The calendar.</param>
    /// <param name="workshop">Name of the workshop; stands in titles and, scrambled, in every UID.</param>
    /// <param name="now">The moment of writing.</param>
    /// <param name="before">The calendar that the maker's phone may have; evenings of it after <paramref name="now"/> in which nothing is done any more are cancelled. Null for none.</param>
    /// <param name="reminderMinutes">How long before an evening the phone reminds; null for never. [min], from zero</param>
    public static string Write(WorkCalendar calendar, string workshop, DateTimeOffset now, WorkCalendar? before = null, int? reminderMinutes = 60)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(workshop);
        var file = new Ical.Net.Calendar { ProductId = "-//Scrapwright//Scrapwright//EN", Method = "PUBLISH" };
        var zone = calendar.TimeZone;
        if (calendar.Evenings is [var first, ..]) file.AddTimeZone(VTimeZone.FromDateTimeZone(zone, first.Start.Date.AddYears(-1), false));
        var scope = new Scope(workshop, now, zone);
        foreach (var evening in calendar.Evenings) file.Events.Add(Evening(scope, calendar, evening, reminderMinutes));
        if (before is not null) file.Events.AddRange(Cancelled(scope, calendar, before));
        foreach (var gift in calendar.Gifts) if (Due(scope, gift) is { } due) file.Events.Add(due);
        return new CalendarSerializer().SerializeToString(file) ?? "";
    }

    private static CalendarEvent Evening(Scope scope, WorkCalendar calendar, CalendarEvening evening, int? reminderMinutes)
    {
        var lines = WorkLines.Of(calendar, evening);
        var titles = lines.Where(l => !l.IsSetUp).Select(l => l.Title).ToArray();
        var shown = string.Join("; ", titles.Take(MostTitles));
        var more = titles.Length > MostTitles ? $"; {titles.Length - MostTitles} more" : "";
        var made = New(scope, UidOf(scope, evening), $"{scope.Workshop}: {shown}{more}");
        // From the first thing to do, not from the beginning of the window, until the last is over.
        (made.DtStart, made.DtEnd) = (scope.At(lines.Min(l => l.Start)), scope.At(lines.Max(l => l.End)));
        made.Description = string.Join('\n', lines.Select(l => $"{Clock(l.Start)} {l.Title}"));
        if (reminderMinutes is { } minutes)
            made.Alarms.Add(new Alarm { Action = "DISPLAY", Description = made.Summary, Trigger = new Trigger(Duration.FromMinutes(-minutes)) });
        return made;
    }

    private static IEnumerable<CalendarEvent> Cancelled(Scope scope, WorkCalendar calendar, WorkCalendar before)
    {
        var kept = calendar.Evenings.Select(e => UidOf(scope, e)).ToHashSet(StringComparer.Ordinal);
        foreach (var evening in before.Evenings.Where(e => e.End > scope.Now && !kept.Contains(UidOf(scope, e))))
        {
            var made = New(scope, UidOf(scope, evening), $"{scope.Workshop}: nothing any more");
            (made.DtStart, made.DtEnd, made.Status) = (scope.At(evening.Start), scope.At(evening.End), "CANCELLED");
            yield return made;
        }
    }

    private static CalendarEvent? Due(Scope scope, CalendarGift gift)
    {
        if (gift.Due is not { } due) return null;
        var made = New(scope, Uid(scope, "due", gift.Gift), $"{gift.Gift} is due");
        // A day of its own, which takes nobody's time.
        (made.DtStart, made.DtEnd, made.Transparency) = (new CalDateTime(due), new CalDateTime(due.AddDays(1)), "TRANSPARENT");
        made.Description = gift switch
        {
            { ReadyAt: null } => "It is ready.",
            { IsLate: true, ReadyAt: { } late } => $"LATE: ready only {Day(late)}.",
            { ReadyAt: { } ready } => $"Ready {Day(ready)}.",
        };
        return made;
    }

    private static CalendarEvent New(Scope scope, string uid, string summary) => new()
    {
        Uid = uid,
        Summary = summary,
        DtStamp = scope.Stamp,
        LastModified = scope.Stamp,
        Sequence = (int)(scope.Now - FirstSequence).TotalMinutes,
    };

    // By its end: the evening that has begun starts later each time it is planned.
    private static string UidOf(Scope scope, CalendarEvening evening) => Uid(scope, "evening", evening.End.UtcDateTime.ToString("yyyyMMddTHHmm", CultureInfo.InvariantCulture));

    private static string Uid(Scope scope, string kind, string what) =>
        $"{kind}-{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{scope.Workshop}\n{kind}\n{what}"))[..16])}@scrapwright.invalid";

    private static string Clock(DateTimeOffset moment) => moment.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Day(DateTimeOffset moment) => moment.ToString("dddd d MMMM, HH:mm", CultureInfo.InvariantCulture);

    private sealed record Scope(string Workshop, DateTimeOffset Now, string Zone)
    {
        // Whole seconds, as RFC 5545 writes them.
        internal CalDateTime Stamp { get; } = new(new DateTime(Now.UtcTicks - (Now.UtcTicks % TimeSpan.TicksPerSecond), DateTimeKind.Utc), CalDateTime.UtcTzId);

        internal CalDateTime At(DateTimeOffset moment) => new(moment.DateTime, Zone);
    }
}
