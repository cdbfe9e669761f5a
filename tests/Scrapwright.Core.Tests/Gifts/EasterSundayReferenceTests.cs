using Scrapwright.Core.Gifts;

namespace Scrapwright.Core.Tests.Gifts;

public sealed class EasterSundayReferenceTests
{
    // Western Easter Sundays of 2000 to 2050, from the test data of the public project dateutil (tests/test_easter.py, "List of easters between 1990 and 2050"; seen 2026-11):
    // month and day in the order of the years.
    private static readonly string[] Published =
    [
        "4-23", "4-15", "3-31", "4-20", "4-11", "3-27", "4-16", "4-8", "3-23", "4-12",
        "4-4", "4-24", "4-8", "3-31", "4-20", "4-5", "3-27", "4-16", "4-1", "4-21",
        "4-12", "4-4", "4-17", "4-9", "3-31", "4-20", "4-5", "3-28", "4-16", "4-1",
        "4-21", "4-13", "3-28", "4-17", "4-9", "3-25", "4-13", "4-5", "4-25", "4-10",
        "4-1", "4-21", "4-6", "3-29", "4-17", "4-9", "3-25", "4-14", "4-5", "4-18", "4-10",
    ];

    [Fact]
    public void Of_is_the_published_date()
    {
        var ours = Enumerable.Range(2000, Published.Length).Select(EasterSunday.Of).Select(day => $"{day.Month}-{day.Day}");

        Assert.Equal(Published, ours);
    }

    // From memory: the earliest date there can be, 22 March, was in 1818; the latest, 25 April, in 1943.
    [Fact]
    public void Of_reaches_the_earliest_and_the_latest_date() =>
        Assert.Equal((new DateOnly(1818, 3, 22), new DateOnly(1943, 4, 25)), (EasterSunday.Of(1818), EasterSunday.Of(1943)));

    // The rule of the church, apart from the formula: a Sunday, from 22 March to 25 April.
    [Fact]
    public void Of_is_a_sunday_between_22_March_and_25_April_in_every_year()
    {
        foreach (var year in Enumerable.Range(1, 9999))
        {
            var easter = EasterSunday.Of(year);

            Assert.Equal((year, DayOfWeek.Sunday), (easter.Year, easter.DayOfWeek));
            Assert.InRange(easter, new DateOnly(year, 3, 22), new DateOnly(year, 4, 25));
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(10_000)]
    public void Of_refuses_a_year_that_there_is_not(int year) => Assert.Throws<ArgumentOutOfRangeException>(() => EasterSunday.Of(year));
}
