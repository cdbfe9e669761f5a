using System.Globalization;
using System.Text.RegularExpressions;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Gifts;

/// <summary>Repetitions in plain words, written and read: <c>every year on 19 June</c>, <c>third Saturday of June</c>, <c>Easter plus 49 days</c>.</summary>
public static partial class RepetitionWords
{
    /// <summary>What would be understood.</summary>
    public const string Expected = "nothing, every year, every year on 19 June, third Saturday of June, last Friday of November, or Easter plus 49 days";

    private const int LongestRead = 80;
    private const int MostSlips = 2;

    private static readonly string[] Months = [.. CultureInfo.InvariantCulture.DateTimeFormat.MonthNames.Take(12)];
    private static readonly string[] Weekdays = CultureInfo.InvariantCulture.DateTimeFormat.DayNames;
    private static readonly string[] Which = ["first", "second", "third", "fourth", "last"];
    private static readonly string[] Known = [.. Months, .. Weekdays, .. Which, "every", "year", "on", "the", "of", "in", "Easter", "plus", "minus", "days", "after", "before"];

    /// <summary>In words; empty when it does not come back.</summary>
    public static string Write(Repetition repetition) => repetition switch
    {
        Repetition.OnDate date => $"every year on {date.Day} {Months[date.Month - 1]}",
        Repetition.OnWeekday day => $"{Which[day.Which == Repetition.OnWeekday.Last ? ^1 : day.Which - 1]} {Weekdays[(int)day.Weekday]} of {Months[day.Month - 1]}",
        Repetition.FromEaster { Days: 0 } => "Easter",
        Repetition.FromEaster easter => string.Create(CultureInfo.InvariantCulture, $"Easter {(easter.Days > 0 ? "plus" : "minus")} {Math.Abs(easter.Days)} {(Math.Abs(easter.Days) == 1 ? "day" : "days")}"),
        _ => "",
    };

    /// <summary>What the words mean; null when they cannot be understood.</summary>
    /// <param name="text">The words; upper and lower case are alike.</param>
    /// <param name="date">The date that "every year" alone means.</param>
    public static Repetition? Find(string text, DateOnly date)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > LongestRead) return null;
        var plain = Blanks().Replace(text.Trim().ToLowerInvariant(), " ");
        if (plain is "" or "no" or "never" or "once") return new Repetition.Never();
        if (plain is "every year" or "yearly") return new Repetition.OnDate(date.Month, date.Day);
        var day = Lead().Replace(plain, "");
        return FindDate(day) ?? (Repetition?)FindWeekday(day) ?? FindEaster(day);
    }

    /// <summary>Words that would be understood and are spelled nearly like those that were not; empty when there are none.</summary>
    public static string Nearest(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > LongestRead) return "";
        var corrected = string.Join(' ', text.Trim().Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Corrected));
        return Find(corrected, new DateOnly(2000, 1, 1)) is { } understood && understood is not Repetition.Never ? corrected : "";
    }

    private static string Corrected(string word)
    {
        if (!word.All(char.IsLetter) || Known.Contains(word, StringComparer.OrdinalIgnoreCase)) return word;
        var near = NearestWord.Of(word, Known);
        return Spelling.Distance(word.ToLowerInvariant(), near.ToLowerInvariant()) <= MostSlips ? near : word;
    }

    private static Repetition.OnDate? FindDate(string text)
    {
        var match = DayAndMonth().Match(text);
        if (!match.Success) return null;
        var month = Place(Months, match.Groups["month"].Value) + 1;
        var isDay = int.TryParse(match.Groups["day"].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var day);

        // 2000 had a 29 February.
        return isDay && month > 0 && day >= 1 && day <= DateTime.DaysInMonth(2000, month) ? new(month, day) : null;
    }

    private static Repetition.OnWeekday? FindWeekday(string text)
    {
        var match = WeekdayOfMonth().Match(text);
        if (!match.Success) return null;
        var which = Place(Which, match.Groups["which"].Value) + 1;
        var weekday = Place(Weekdays, match.Groups["weekday"].Value);
        var month = Place(Months, match.Groups["month"].Value) + 1;
        return which > 0 && weekday >= 0 && month > 0 ? new(month, which == Which.Length ? Repetition.OnWeekday.Last : which, (DayOfWeek)weekday) : null;
    }

    private static Repetition.FromEaster? FindEaster(string text)
    {
        if (text is "easter" or "easter sunday") return new(0);
        var match = EasterAndDays().Match(text);
        if (!match.Success || !int.TryParse(match.Groups["days"].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture, out var days)) return null;
        var signed = match.Groups["sign"].Value is "minus" or "before" ? -days : days;
        return signed is >= Repetition.FromEaster.Fewest and <= Repetition.FromEaster.Most ? new(signed) : null;
    }

    private static int Place(string[] words, string word) => Array.FindIndex(words, w => string.Equals(w, word, StringComparison.OrdinalIgnoreCase));

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex("^(every year )?(on )?(the )?")]
    private static partial Regex Lead();

    [GeneratedRegex(@"^((?<day>\d{1,2}) (?<month>[a-z]+)|(?<month>[a-z]+) (?<day>\d{1,2}))$")]
    private static partial Regex DayAndMonth();

    [GeneratedRegex("^(?<which>[a-z]+) (?<weekday>[a-z]+) (of|in) (?<month>[a-z]+)$")]
    private static partial Regex WeekdayOfMonth();

    [GeneratedRegex(@"^(easter (?<sign>plus|minus) (?<days>\d{1,3})( days?)?|(?<days>\d{1,3}) days? (?<sign>after|before) easter)$")]
    private static partial Regex EasterAndDays();
}
