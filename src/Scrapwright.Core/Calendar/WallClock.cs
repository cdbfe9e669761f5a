namespace Scrapwright.Core.Calendar;

/// <summary>What the clock on the wall shows in a time zone, the other way round.</summary>
internal static class WallClock
{
    /// <summary>
    /// The first moment of a day at which the clock shows a time or a later one. So a time that comes twice, because the clock is put back, is the first of the two; a time that
    /// does not come, because the clock is put forward, is the moment at which it is put forward.
    /// </summary>
    /// <param name="zone">The time zone.</param>
    /// <param name="day">The day by that clock.</param>
    /// <param name="time">The time by that clock.</param>
    internal static DateTimeOffset First(TimeZoneInfo zone, DateOnly day, TimeOnly time)
    {
        var shown = day.ToDateTime(time, DateTimeKind.Utc);
        // No zone is a day off, and none changes its clock twice within the two days between these.
        var (before, after) = (zone.GetUtcOffset(shown.AddDays(-1)), zone.GetUtcOffset(shown.AddDays(1)));
        foreach (var offset in new[] { before, after })
        {
            var moment = shown - offset;
            if (zone.GetUtcOffset(moment) == offset) return new(moment);
        }

        return Change(zone, shown - after, shown - before, before);
    }

    /// <summary>The first moment of a day.</summary>
    /// <param name="zone">The time zone.</param>
    /// <param name="day">The day by that clock.</param>
    internal static DateTimeOffset DayStart(TimeZoneInfo zone, DateOnly day) => First(zone, day, TimeOnly.MinValue);

    /// <summary>The first whole minute in which the clock is no longer off by an offset that it has at the lower end and not at the upper.</summary>
    private static DateTimeOffset Change(TimeZoneInfo zone, DateTime lower, DateTime upper, TimeSpan offset)
    {
        var (low, high) = (0, (int)Math.Ceiling((upper - lower).TotalMinutes));
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (zone.GetUtcOffset(lower.AddMinutes(middle)) == offset) low = middle;
            else high = middle;
        }

        return new(lower.AddMinutes(high));
    }
}
