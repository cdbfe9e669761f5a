using System.Text.RegularExpressions;

namespace Scrapwright.Core.Calendar;

/// <summary>Finds the time zone that a shop's clock shows.</summary>
public static partial class ShopZones
{
    /// <summary>The zone of a name.</summary>
    /// <param name="name">Name in the IANA database, for example <c>Europe/Dublin</c>; spaces around it do not matter. Empty for the home zone.</param>
    /// <param name="home">The zone where none is named: that of the machine the program runs on, told by whoever calls.</param>
    /// <returns>The zone; null when the machine's database has no such name.</returns>
    public static TimeZoneInfo? Find(string name, TimeZoneInfo home)
    {
        ArgumentNullException.ThrowIfNull(name);
        var wanted = name.Trim();
        if (wanted.Length == 0) return home;
        // The database is a folder of files: what is no name of a zone shall not be looked for in it.
        return ZoneName().IsMatch(wanted) && TimeZoneInfo.TryFindSystemTimeZoneById(wanted, out var zone) ? zone : null;
    }

    /// <summary>The first moment at which a zone's clock shows a time, or the moment at which it jumps over that time.</summary>
    /// <param name="zone">The zone.</param>
    /// <param name="clock">Day and time by that clock.</param>
    public static DateTimeOffset Moment(TimeZoneInfo zone, DateTime clock)
    {
        ArgumentNullException.ThrowIfNull(zone);
        return WallClock.First(zone, DateOnly.FromDateTime(clock), TimeOnly.FromDateTime(clock));
    }

    [GeneratedRegex(@"^[A-Za-z][A-Za-z0-9_+-]*(/[A-Za-z0-9_+-]+){0,2}$")]
    private static partial Regex ZoneName();
}
