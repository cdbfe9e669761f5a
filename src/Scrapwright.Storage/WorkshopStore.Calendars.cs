using System.Collections.Immutable;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Plans;
using Scrapwright.Storage.Tables;

namespace Scrapwright.Storage;

public sealed partial class WorkshopStore
{
    /// <summary>How many calendars are kept; older ones go.</summary>
    public const int KeptCalendars = 10;

    /// <summary>The calendars that are kept, the latest first.</summary>
    public Task<ImmutableArray<StoredCalendar>> GetCalendarsAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(
            async context => (await context.Calendars.OrderByDescending(r => r.Id).ToListAsync(cancellationToken)).Select(r => r.Stored()).ToImmutableArray(),
            cancellationToken);

    /// <summary>The latest calendar, or null.</summary>
    public Task<StoredCalendar?> FindLatestCalendarAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(
            async context => (await context.Calendars.OrderByDescending(r => r.Id).FirstOrDefaultAsync(cancellationToken))?.Stored(),
            cancellationToken);

    /// <summary>Keeps a calendar as the latest, with the marks it was made with.</summary>
    public Task<StoredCalendar> AddCalendarAsync(WorkCalendar calendar, CalendarMarks marks, CancellationToken cancellationToken = default) =>
        WriteAsync(
            async context =>
            {
                var row = new CalendarRow { Created = clock.GetUtcNow().UtcDateTime, Json = CalendarJson.Write(calendar), Marks = JsonSerializer.Serialize(marks, PlanJson.Options) };
                context.Add(row);
                await context.SaveChangesAsync(cancellationToken);
                await context.Calendars.Where(r => r.Id <= row.Id - KeptCalendars).ExecuteDeleteAsync(cancellationToken);
                return (row.Stored(), true);
            },
            cancellationToken);

    /// <summary>What the maker has marked in the calendar.</summary>
    public Task<CalendarMarks> GetMarksAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(async context => MarksOf(await context.Shop.SingleOrDefaultAsync(cancellationToken)), cancellationToken);

    /// <summary>Keeps what the maker has marked in the calendar, in place of what was kept.</summary>
    public Task PutMarksAsync(CalendarMarks marks, CancellationToken cancellationToken = default) =>
        WriteAsync(
            async context =>
            {
                var row = await context.Shop.SingleOrDefaultAsync(cancellationToken);
                if (row is null) context.Add(row = new ShopRow());
                row.Marks = marks.AreNone ? null : JsonSerializer.Serialize(marks, PlanJson.Options);
                await context.SaveChangesAsync(cancellationToken);
                return (true, true);
            },
            cancellationToken);

    private static CalendarMarks MarksOf(ShopRow? row) =>
        row?.Marks is { } json ? JsonSerializer.Deserialize<CalendarMarks>(json, PlanJson.Options)! : new();
}
