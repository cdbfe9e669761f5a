using System.Collections.Immutable;
using Scrapwright.Core.Calendar;

namespace Scrapwright.Client.Calendar;

/// <summary>A day of a week as it is shown.</summary>
/// <param name="Day">The day.</param>
/// <param name="Evenings">Its windows in which something is done.</param>
/// <param name="FreeMinutes">Minutes of its windows in which nothing is. [min], from zero</param>
public sealed record WeekDay(DateOnly Day, ImmutableArray<CalendarEvening> Evenings, int FreeMinutes)
{
    /// <summary>The weeks from the first evening that is not over to the last in which something is done, Monday first; those without work are left out.</summary>
    /// <param name="calendar">The calendar.</param>
    /// <param name="clock">Its clock.</param>
    /// <param name="now">What is over by then is left out.</param>
    public static ImmutableArray<ImmutableArray<WeekDay>> Weeks(WorkCalendar calendar, ShopClock clock, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(clock);
        var evenings = calendar.Evenings.Where(e => e.End > now).ToLookup(e => Moments.DateOf(e.Start));
        var starts = calendar.Evenings.Select(e => e.Start).ToHashSet();
        var free = CalendarWindows.Of(calendar.Problem).Select(w => (Start: clock.At(w.Start), w.Minutes)).Where(w => !starts.Contains(w.Start) && w.Start > now)
            .ToLookup(w => Moments.DateOf(w.Start), w => w.Minutes);
        return
        [
            .. evenings.Select(day => Monday(day.Key)).Distinct().Order()
                .Select(monday => Enumerable.Range(0, 7).Select(monday.AddDays).Select(day => new WeekDay(day, [.. evenings[day]], free[day].Sum())).ToImmutableArray()),
        ];
    }

    private static DateOnly Monday(DateOnly day) => day.AddDays(-(((int)day.DayOfWeek + 6) % 7));
}
