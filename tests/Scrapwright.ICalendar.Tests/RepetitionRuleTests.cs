using System.Globalization;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Scrapwright.Core.Gifts;

namespace Scrapwright.ICalendar.Tests;

/// <summary>Occasions against the recurrence rules of RFC 5545, 3.3.10, as the library for calendar files works them out.</summary>
public sealed class RepetitionRuleTests
{
    private const int First = 2024;
    private const int Years = 60;

    private static readonly string[] Days = ["SU", "MO", "TU", "WE", "TH", "FR", "SA"];

    [Fact]
    public void A_weekday_of_a_month_is_that_of_the_rule()
    {
        for (var month = 1; month <= 12; month++)
        {
            foreach (var which in new[] { 1, 2, 3, 4, Repetition.OnWeekday.Last })
            {
                foreach (var weekday in Enum.GetValues<DayOfWeek>())
                {
                    var ours = DaysOf(new Repetition.OnWeekday(month, which, weekday));

                    Assert.Equal(DaysOf($"FREQ=YEARLY;BYMONTH={month};BYDAY={which}{Days[(int)weekday]}", ours[0]), ours);
                }
            }
        }
    }

    [Fact]
    public void A_date_of_every_year_is_that_of_the_rule()
    {
        for (var day = new DateOnly(2025, 1, 1); day.Year == 2025; day = day.AddDays(1))
        {
            var ours = DaysOf(new Repetition.OnDate(day.Month, day.Day));

            Assert.Equal(DaysOf($"FREQ=YEARLY;BYMONTH={day.Month};BYMONTHDAY={day.Day}", ours[0]), ours);
        }
    }

    // The rule leaves out years that have none (3.3.10: invalid dates are ignored); an occasion is kept on the day before instead.
    [Fact]
    public void The_29_February_is_that_of_the_rule_in_leap_years_and_the_28_in_all_others()
    {
        var ours = DaysOf(new Repetition.OnDate(2, 29));
        var leap = ours.Where(day => DateTime.IsLeapYear(day.Year)).ToArray();

        Assert.Equal(DaysOf("FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=29", ours[0], leap.Length), leap);
        Assert.All(ours.Except(leap), day => Assert.Equal((2, 28), (day.Month, day.Day)));
    }

    private static DateOnly[] DaysOf(Repetition repetition) => [.. Enumerable.Range(First, Years).Select(year => repetition.FindIn(year)!.Value)];

    private static DateOnly[] DaysOf(string rule, DateOnly start, int count = Years)
    {
        var occasion = new CalendarEvent
        {
            Start = new CalDateTime(start.Year, start.Month, start.Day),
            RecurrenceRule = new RecurrenceRule(rule + string.Create(CultureInfo.InvariantCulture, $";COUNT={count}")),
        };
        return [.. occasion.GetOccurrences().Take(count + 1).Select(o => DateOnly.FromDateTime(o.Period.StartTime.Value))];
    }
}
