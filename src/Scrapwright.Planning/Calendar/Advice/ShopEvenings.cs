using Scrapwright.Core.Calendar;

namespace Scrapwright.Planning.Calendar.Advice;

/// <summary>The windows of a calendar, all sorts of hours together, and the days of its clock.</summary>
internal sealed class ShopEvenings
{
    private readonly WorkCalendar calendar;
    private readonly TimeZoneInfo? zone;

    /// <summary>Those of a calendar.</summary>
    internal ShopEvenings(WorkCalendar calendar)
    {
        this.calendar = calendar;
        zone = ShopZones.Find(calendar.TimeZone, TimeZoneInfo.Utc);
        var windows = new List<ScheduleWindow>();
        foreach (var window in calendar.Problem.Hours.SelectMany(h => h.Windows).OrderBy(w => w.Start))
        {
            if (windows.Count > 0 && windows[^1].End >= window.Start) windows[^1] = new(windows[^1].Start, Math.Max(windows[^1].End, window.End));
            else windows.Add(window);
        }

        All = [.. windows];
    }

    /// <summary>In order, apart from each other.</summary>
    internal ScheduleWindow[] All { get; }

    /// <summary>How many begin from one minute on and before another.</summary>
    internal int Between(int from, int to) => All.Count(w => w.Start >= from && w.Start < to);

    /// <summary>The moment of a minute by the shop's clock.</summary>
    internal DateTimeOffset At(int minute)
    {
        var moment = calendar.Start.AddMinutes(minute);
        return zone is null ? moment : TimeZoneInfo.ConvertTime(moment, zone);
    }

    /// <summary>The first day that begins when a minute is over.</summary>
    internal DateOnly DayAfter(int minute)
    {
        var moment = At(minute);
        var day = DateOnly.FromDateTime(moment.DateTime);
        return moment.TimeOfDay == TimeSpan.Zero ? day : day.AddDays(1);
    }
}
