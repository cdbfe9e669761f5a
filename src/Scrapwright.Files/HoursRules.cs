using System.Collections.Immutable;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>What working hours must keep to, in a file as on a screen.</summary>
public static class HoursRules
{
    private const int LongestName = 60;
    private const int MostRanges = 12;
    private const int MostExceptions = 500;

    // A calendar has a date for every minute; those of the first and last year leave room to both sides.
    private static readonly DateOnly FirstDay = new(1970, 1, 1);
    private static readonly DateOnly LastDay = new(9000, 1, 1);

    /// <summary>Every value that breaks a rule, with its path; empty when the hours will do.</summary>
    /// <param name="hours">The hours; a null in a list is told too.</param>
    public static ImmutableArray<ValueProblem> Check(WorkHours hours)
    {
        ArgumentNullException.ThrowIfNull(hours);
        var checks = new ValueChecks();
        checks.Text("timeZone", hours.TimeZone, LongestName);
        if (checks.Problems.IsEmpty && ShopZones.Find(hours.TimeZone, TimeZoneInfo.Utc) is null)
            checks.Require(false, "timeZone", hours.TimeZone, FileMessages.ATimeZone(hours.TimeZone));
        checks.Within("makers", hours.Makers, 1, 9);
        if (hours is { QuietFrom: { } from, QuietUntil: { } until })
            checks.Require(from == TimeOnly.MinValue || from > until, "quietFrom", $"{from:HH\\:mm}", $"later than quietUntil, which is {until:HH\\:mm}: between them machines may run");
        Week(hours.Week, checks);
        checks.Within("exceptions", hours.Exceptions.Length, 0, MostExceptions);
        foreach (var (i, exception) in hours.Exceptions.Index()) Exception($"exceptions[{i}]", exception, checks);
        return checks.Problems;
    }

    private static void Week(ImmutableArray<DayHours> week, ValueChecks checks)
    {
        foreach (var (i, day) in week.Index())
        {
            if (day is null)
            {
                checks.Require(false, $"week[{i}]", "null", FileMessages.AValue);
                continue;
            }

            checks.Require(Enum.IsDefined(day.Day), $"week[{i}].day", $"{day.Day}", "a weekday");
            checks.Require(week.Take(i).All(other => other?.Day != day.Day), $"week[{i}].day", $"{day.Day}", "each weekday only once");
            Ranges($"week[{i}].hours", day.Hours, checks);
        }
    }

    private static void Exception(string path, OtherHours? exception, ValueChecks checks)
    {
        if (exception is null)
        {
            checks.Require(false, path, "null", FileMessages.AValue);
            return;
        }

        checks.Require(exception.First >= FirstDay && exception.First <= LastDay, $"{path}.first", $"{exception.First:yyyy-MM-dd}", FileMessages.ADate);
        checks.Require(exception.Last >= exception.First && exception.Last <= LastDay, $"{path}.last", $"{exception.Last:yyyy-MM-dd}", "a date not before the first");
        checks.Text($"{path}.note", exception.Note, LongestName);
        Ranges($"{path}.hours", exception.Hours, checks);
    }

    private static void Ranges(string path, ImmutableArray<HourRange> ranges, ValueChecks checks)
    {
        if (ranges.IsDefault) return;
        checks.Within(path, ranges.Length, 0, MostRanges);
        foreach (var (i, range) in ranges.Index())
        {
            if (range is null)
            {
                checks.Require(false, $"{path}[{i}]", "null", FileMessages.AValue);
                continue;
            }

            var isForward = range.Until == TimeOnly.MinValue || range.Until > range.From;
            checks.Require(isForward, $"{path}[{i}].until", $"{range.Until:HH\\:mm}", $"later than {range.From:HH\\:mm}, or 24:00 for the end of the day; what goes on after midnight belongs to the next day");
            if (isForward && i > 0 && ranges[i - 1] is { } before)
                checks.Require(before.Until != TimeOnly.MinValue && range.From >= before.Until, $"{path}[{i}].from", $"{range.From:HH\\:mm}", "not before the hours before it are over");
        }
    }
}
