using System.Globalization;

namespace Scrapwright.Client.Calendar;

/// <summary>Days and times as a person says them.</summary>
public static class Moments
{
    /// <summary>Saturday 28 November.</summary>
    public static string LongDay(DateTimeOffset moment) => moment.ToString("dddd d MMMM", CultureInfo.InvariantCulture);

    /// <summary>Sat 28 Nov.</summary>
    public static string Day(DateTimeOffset moment) => moment.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    /// <summary>Sat 28 Nov.</summary>
    public static string Day(DateOnly day) => day.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    /// <summary>18:30.</summary>
    public static string Clock(DateTimeOffset moment) => moment.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>18:30 to 21:30, or until midnight.</summary>
    public static string Hours(DateTimeOffset start, DateTimeOffset end) => $"{Clock(start)} to {(end.TimeOfDay == TimeSpan.Zero ? "24:00" : Clock(end))}";

    /// <summary>Sat 28 Nov 18:30.</summary>
    public static string DayAndClock(DateTimeOffset moment) => $"{Day(moment)} {Clock(moment)}";

    /// <summary>The day by the clock on the wall.</summary>
    public static DateOnly DateOf(DateTimeOffset moment) => DateOnly.FromDateTime(moment.DateTime);
}
