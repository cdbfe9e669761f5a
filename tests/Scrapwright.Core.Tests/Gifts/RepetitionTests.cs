using System.Text.Json;
using CsCheck;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Tests.Gifts;

public sealed class RepetitionTests
{
    private static readonly DateOnly Date = new(2027, 6, 19);

    private static readonly Gen<Repetition> Any = Gen.OneOf<Repetition>(
        Gen.Const((Repetition)new Repetition.Never()),
        Gen.Select(Gen.Int[1, 12], Gen.Int[1, 31], (month, day) => (Repetition)new Repetition.OnDate(month, Math.Min(day, DateTime.DaysInMonth(2000, month)))),
        Gen.Select(Gen.Int[1, 12], Gen.Int[1, 5], Gen.Int[0, 6], (month, which, day) => (Repetition)new Repetition.OnWeekday(month, which == 5 ? Repetition.OnWeekday.Last : which, (DayOfWeek)day)),
        Gen.Int[Repetition.FromEaster.Fewest, Repetition.FromEaster.Most].Select(days => (Repetition)new Repetition.FromEaster(days)));

    [Theory]
    [InlineData("", 0)]
    [InlineData("every year", 2028, 6, 19)]
    [InlineData("Every Year on 1 December", 2028, 12, 1)]
    [InlineData("December 1", 2028, 12, 1)]
    [InlineData("third Saturday of June", 2028, 6, 17)]
    [InlineData("every year on the last  friday in November", 2028, 11, 24)]
    [InlineData("Easter", 2028, 4, 16)]
    [InlineData("Easter plus 49 days", 2028, 6, 4)]
    [InlineData("2 days before Easter", 2028, 4, 14)]
    public void Words_give_one_day_a_year(string words, int year, int month = 1, int day = 1) =>
        Assert.Equal(year == 0 ? null : new DateOnly(year, month, day), RepetitionWords.Find(words, Date)!.FindIn(2028));

    [Theory]
    [InlineData("sometimes")]
    [InlineData("every month")]
    [InlineData("31 June")]
    [InlineData("0 June")]
    [InlineData("fifth Monday of May")]
    [InlineData("third Saturday")]
    [InlineData("Easter plus 251 days")]
    [InlineData("Easter minus 81 days")]
    [InlineData("Easter plus 99999999999 days")]
    public void Words_that_mean_no_day_are_not_understood(string words) => Assert.Null(RepetitionWords.Find(words, Date));

    [Theory]
    [InlineData("thrid Saterday of June", "third Saturday of June")]
    [InlineData("every yaer", "every year")]
    [InlineData("Eastre plus 2 days", "Easter plus 2 days")]
    [InlineData("sometimes", "")]
    public void Nearest_corrects_the_spelling(string words, string nearest) => Assert.Equal(nearest, RepetitionWords.Nearest(words));

    [Fact]
    public void Words_of_every_repetition_are_read_back_as_it() =>
        Any.Sample(repetition => RepetitionWords.Find(RepetitionWords.Write(repetition), Date) == repetition);

    [Fact]
    public void Json_of_every_repetition_is_read_back_as_it() =>
        Any.Sample(repetition => JsonSerializer.Deserialize<Repetition>(JsonSerializer.Serialize(repetition, PlanJson.Options), PlanJson.Options) == repetition);

    [Theory]
    [InlineData("\"every year\"")]
    [InlineData("\"now and then\"")]
    [InlineData("3")]
    public void Json_that_means_no_day_is_refused(string json) => Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<Repetition>(json, PlanJson.Options));

    [Fact]
    public void Every_repetition_gives_a_day_of_the_year_that_was_asked_for() => Gen.Select(Any, Gen.Int[1, 9999]).Sample((repetition, year) =>
        repetition.FindIn(year) is { } day ? day.Year == year : repetition is Repetition.Never);

    [Fact]
    public void A_weekday_of_a_month_is_that_weekday_in_its_week() => Gen.Select(Gen.Int[1, 12], Gen.Int[1, 4], Gen.Int[0, 6], Gen.Int[1, 9999]).Sample((month, which, weekday, year) =>
    {
        var day = new Repetition.OnWeekday(month, which, (DayOfWeek)weekday).FindIn(year)!.Value;
        var last = new Repetition.OnWeekday(month, Repetition.OnWeekday.Last, (DayOfWeek)weekday).FindIn(year)!.Value;

        return (int)day.DayOfWeek == weekday && day.Month == month && (day.Day - 1) / 7 == which - 1
            && (int)last.DayOfWeek == weekday && last.Month == month && DateTime.DaysInMonth(year, month) - last.Day < 7;
    });

    [Theory]
    [InlineData(2027, 28)]
    [InlineData(2028, 29)]
    [InlineData(2100, 28)]
    public void The_29_February_is_kept_on_the_28_where_there_is_none(int year, int day) =>
        Assert.Equal(new DateOnly(year, 2, day), new Repetition.OnDate(2, 29).FindIn(year));
}
