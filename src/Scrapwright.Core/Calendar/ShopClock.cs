using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>What the clock on the wall shows at each minute of a calendar: made where time zones are known, of use where they are not, as in a browser.</summary>
/// <param name="Start">The moment from which minutes are counted, with its difference from UTC.</param>
/// <param name="Changes">When the clock is put forward or back, in order.</param>
public sealed record ShopClock(DateTimeOffset Start, ImmutableArray<ClockChange> Changes)
{
    // Definition: minutes a day. No zone changes its clock twice within one.
    private const int DayMinutes = 1440;

    /// <summary>The clock of a zone.</summary>
    /// <param name="start">The moment from which minutes are counted.</param>
    /// <param name="horizonMinutes">How far it is known. [min], above zero</param>
    /// <param name="zone">The zone.</param>
    public static ShopClock Of(DateTimeOffset start, int horizonMinutes, TimeZoneInfo zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        int Offset(int minute) => (int)zone.GetUtcOffset(start.AddMinutes(minute)).TotalMinutes;
        var changes = ImmutableArray.CreateBuilder<ClockChange>();
        for (var minute = 0; minute < horizonMinutes; minute += DayMinutes)
        {
            var (low, high) = (minute, minute + DayMinutes);
            if (Offset(low) == Offset(high)) continue;
            var before = Offset(low);
            while (high - low > 1)
            {
                var middle = (low + high) / 2;
                if (Offset(middle) == before) low = middle;
                else high = middle;
            }

            changes.Add(new(high, Offset(high)));
        }

        return new(TimeZoneInfo.ConvertTime(start, zone), changes.ToImmutable());
    }

    /// <summary>The moment of a minute, by the clock on the wall.</summary>
    /// <param name="minute">Minutes from the start, of either sign. [min]</param>
    public DateTimeOffset At(int minute)
    {
        var offset = Changes.LastOrDefault(c => c.Minute <= minute) is { } change ? TimeSpan.FromMinutes(change.OffsetMinutes) : Start.Offset;
        return Start.AddMinutes(minute).ToOffset(offset);
    }

    /// <summary>The minute of a moment; below zero before the start.</summary>
    /// <param name="moment">The moment.</param>
    /// <returns>[min], rounded down</returns>
    public int MinuteOf(DateTimeOffset moment) => (int)Math.Floor((moment - Start).TotalMinutes);

    /// <summary>A moment as the clock on the wall shows it.</summary>
    /// <param name="moment">The moment.</param>
    public DateTimeOffset Shown(DateTimeOffset moment) => moment.ToOffset(At(MinuteOf(moment)).Offset);
}
