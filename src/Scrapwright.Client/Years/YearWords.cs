using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Client.Years;

/// <summary>Dates and gifts of the years as a person says them.</summary>
public static class YearWords
{
    private const int DaysOfWeek = 7;
    private const int WeeksBeforeCounted = 3;

    /// <summary>Sat 19 Jun 2027.</summary>
    public static string Day(DateOnly day) => day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>How far a day is: <c>today</c>, <c>in 5 days</c>, <c>in 12 weeks</c>, <c>3 days ago</c>.</summary>
    public static string HowFar(DateOnly day, DateOnly today) => (day.DayNumber - today.DayNumber) switch
    {
        0 => "today",
        1 => "tomorrow",
        -1 => "yesterday",
        > 0 and var days => $"in {Span(days)}",
        var days => $"{Span(-days)} ago",
    };

    /// <summary>What a gift was: title of its design and its options.</summary>
    public static string What(GivenGift given, ImmutableArray<Design> designs)
    {
        ArgumentNullException.ThrowIfNull(given);
        var title = designs.FirstOrDefault(design => GiftYears.IsSame(design.Key, given.Design))?.Title ?? given.Design;
        return given.Options.IsEmpty ? title : $"{title}: {string.Join(", ", given.Options.Select(option => $"{option.Key.Replace('-', ' ')} {option.Value}"))}";
    }

    private static string Span(int days) => days < DaysOfWeek * WeeksBeforeCounted ? $"{days} days" : $"{days / DaysOfWeek} weeks";
}
