using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar;

/// <summary>
/// The hours of a shop as windows in minutes that pass. A change of the clock within a window makes it longer or shorter, as it does for whoever stands in the shop meanwhile.
/// </summary>
public sealed record WorkWindows
{
    // Ten years are beyond any plan, and keep minutes far from what an int holds: our own choice.
    private const int MostDays = 3660;

    private WorkWindows(TimeZoneInfo zone, DateTimeOffset start)
    {
        Zone = zone;
        // Nothing starts in the past: a minute that has begun is over.
        var whole = new DateTimeOffset(start.UtcTicks - (start.UtcTicks % TimeSpan.TicksPerMinute), TimeSpan.Zero);
        Start = TimeZoneInfo.ConvertTime(whole.UtcTicks == start.UtcTicks ? whole : whole.AddMinutes(1), zone);
    }

    /// <summary>The zone whose clock hangs on the wall.</summary>
    public TimeZoneInfo Zone { get; }

    /// <summary>The moment from which minutes are counted, in the zone: the one asked for, rounded up to a whole minute.</summary>
    public DateTimeOffset Start { get; }

    /// <summary>Minutes until the last day is over. [min], above zero</summary>
    public int HorizonMinutes { get; private init; }

    /// <summary>When the shop is worked in; in order, apart from each other, within the horizon.</summary>
    public ImmutableArray<ScheduleWindow> All { get; private init; } = [];

    /// <summary>The parts of these in which machines may run.</summary>
    public ImmutableArray<ScheduleWindow> Machines { get; private init; } = [];

    /// <summary>The windows of a shop.</summary>
    /// <param name="hours">Its hours; a range that ends before it begins counts for nothing, ranges that overlap or touch are one.</param>
    /// <param name="zone">The zone of its clock; <see cref="WorkHours.TimeZone"/> is not looked at.</param>
    /// <param name="start">The moment from which minutes are counted.</param>
    /// <param name="days">How many days, the one of the start counted. [d], 1 to 3660</param>
    /// <exception cref="ArgumentOutOfRangeException">Days out of range.</exception>
    public static WorkWindows Of(WorkHours hours, TimeZoneInfo zone, DateTimeOffset start, int days)
    {
        ArgumentNullException.ThrowIfNull(hours);
        ArgumentNullException.ThrowIfNull(zone);
        ArgumentOutOfRangeException.ThrowIfLessThan(days, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(days, MostDays);
        var empty = new WorkWindows(zone, start);
        var first = DateOnly.FromDateTime(empty.Start.DateTime);
        var horizon = empty.MinuteOf(first.AddDays(days));
        var dates = Enumerable.Range(0, days).Select(first.AddDays).ToArray();
        var all = Merged(dates.SelectMany(day => HoursOf(hours, day).Select(range => empty.Window(day, range))), horizon);
        var loud = Merged(dates.Select(day => empty.Window(day, LoudOf(hours))), horizon);
        return new(zone, empty.Start) { HorizonMinutes = horizon, All = all, Machines = Common(all, loud) };
    }

    /// <summary>The moment of a minute, in the zone.</summary>
    /// <param name="minute">Minutes from the start, of either sign. [min]</param>
    public DateTimeOffset At(int minute) => TimeZoneInfo.ConvertTime(Start.AddMinutes(minute), Zone);

    /// <summary>The minute of a moment; below zero before the start.</summary>
    /// <returns>[min], rounded down</returns>
    public int MinuteOf(DateTimeOffset moment) => (int)Math.Floor((moment - Start).TotalMinutes);

    /// <summary>The minute at which a day begins by the clock on the wall.</summary>
    /// <returns>[min], below zero when it began before the start</returns>
    public int MinuteOf(DateOnly day) => MinuteOf(WallClock.DayStart(Zone, day));

    /// <summary>The parts of windows that lie in some months of the year.</summary>
    /// <param name="windows">Windows in order.</param>
    /// <param name="isWanted">Tells of a month, 1 to 12, whether it is wanted.</param>
    public ImmutableArray<ScheduleWindow> InMonths(ImmutableArray<ScheduleWindow> windows, Func<int, bool> isWanted)
    {
        ArgumentNullException.ThrowIfNull(isWanted);
        var months = new List<ScheduleWindow>();
        for (var month = FirstOfMonth(); MinuteOf(month) < HorizonMinutes; month = month.AddMonths(1))
            if (isWanted(month.Month)) months.Add(new(MinuteOf(month), MinuteOf(month.AddMonths(1))));
        return Common(windows, Merged(months, HorizonMinutes));
    }

    /// <summary>The months of the year, 1 to 12, from the start until a minute, each once.</summary>
    /// <param name="minute">[min]; beyond the horizon counts as the horizon.</param>
    public IEnumerable<int> MonthsUntil(int minute)
    {
        var end = Math.Max(1, Math.Min(minute, HorizonMinutes));
        // Definition: twelve months a year.
        for (var (month, count) = (FirstOfMonth(), 0); count < 12 && MinuteOf(month) < end; month = month.AddMonths(1), count++) yield return month.Month;
    }

    private DateOnly FirstOfMonth() => new(Start.Year, Start.Month, 1);

    private ScheduleWindow Window(DateOnly day, HourRange range) => new(
        MinuteOf(WallClock.First(Zone, day, range.From)),
        MinuteOf(range.Until == TimeOnly.MinValue ? WallClock.DayStart(Zone, day.AddDays(1)) : WallClock.First(Zone, day, range.Until)));

    private static ImmutableArray<HourRange> HoursOf(WorkHours hours, DateOnly day) =>
        hours.Exceptions.LastOrDefault(other => day >= other.First && day <= other.Last) is { } exception
            ? exception.Hours
            : [.. hours.Week.Where(d => d.Day == day.DayOfWeek).SelectMany(d => d.Hours)];

    private static HourRange LoudOf(WorkHours hours) => new(hours.QuietUntil ?? TimeOnly.MinValue, hours.QuietFrom ?? TimeOnly.MinValue);

    private static ImmutableArray<ScheduleWindow> Merged(IEnumerable<ScheduleWindow> windows, int horizon)
    {
        var merged = new List<ScheduleWindow>();
        foreach (var window in windows.Select(w => new ScheduleWindow(Math.Max(0, w.Start), Math.Min(horizon, w.End))).Where(w => w.Minutes > 0).OrderBy(w => w.Start))
        {
            if (merged.Count > 0 && merged[^1].End >= window.Start) merged[^1] = new(merged[^1].Start, Math.Max(merged[^1].End, window.End));
            else merged.Add(window);
        }

        return [.. merged];
    }

    private static ImmutableArray<ScheduleWindow> Common(ImmutableArray<ScheduleWindow> one, ImmutableArray<ScheduleWindow> other)
    {
        var common = ImmutableArray.CreateBuilder<ScheduleWindow>();
        for (int i = 0, j = 0; i < one.Length && j < other.Length;)
        {
            var both = new ScheduleWindow(Math.Max(one[i].Start, other[j].Start), Math.Min(one[i].End, other[j].End));
            if (both.Minutes > 0) common.Add(both);
            if (one[i].End <= other[j].End) i++;
            else j++;
        }

        return common.ToImmutable();
    }
}
