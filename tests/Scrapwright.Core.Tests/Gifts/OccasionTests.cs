using CsCheck;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Core.Tests.Gifts;

public sealed class OccasionTests
{
    private static Occasion OpenDay(string date = "2027-06-19", string repeats = "third Saturday of June") => new()
    {
        Name = "Open day",
        Date = DateOnly.Parse(date, null),
        Repeats = RepetitionWords.Find(repeats, DateOnly.Parse(date, null))!,
    };

    [Theory]
    [InlineData("2027-06-19", "third Saturday of June", "2028-06-17")]
    [InlineData("2027-06-12", "third Saturday of June", "2028-06-17")] // once held a week earlier
    [InlineData("2027-06-26", "third Saturday of June", "2028-06-17")] // once held a week later
    [InlineData("2028-01-02", "every year on 29 December", "2028-12-29")] // once held after New Year
    [InlineData("2028-02-29", "every year", "2029-02-28")]
    [InlineData("2027-03-28", "Easter", "2028-04-16")]
    public void Next_is_as_usual_also_after_another_date(string date, string repeats, string next) =>
        Assert.Equal(DateOnly.Parse(next, null), OpenDay(date, repeats).FindNext());

    [Fact]
    public void What_does_not_come_back_has_no_next_date_and_stays()
    {
        var once = OpenDay(repeats: "");

        Assert.Null(once.FindNext());
        Assert.Equal(once.Date, once.StandsOn(once.Date.AddYears(40)));
    }

    [Theory]
    [InlineData("2027-01-01", "2027-06-19")]
    [InlineData("2027-06-19", "2027-06-19")]
    [InlineData("2027-07-20", "2027-06-19")] // 31 days after it: still to be said whether its gifts are given
    [InlineData("2027-07-21", "2028-06-17")]
    [InlineData("2039-06-01", "2039-06-18")]
    public void It_stands_on_a_date_that_is_not_long_over(string today, string stands) =>
        Assert.Equal(DateOnly.Parse(stands, null), OpenDay().StandsOn(DateOnly.Parse(today, null)));

    [Fact]
    public void It_never_goes_back_and_never_stands_on_a_date_long_over() => Gen.Select(Gen.Int[0, 40_000], Gen.Int[0, 400], Gen.Int[-80, 250]).Sample((from, later, days) =>
    {
        var occasion = new Occasion { Name = "x", Date = DateOnly.FromDayNumber(700_000), Repeats = new Repetition.FromEaster(days) };
        var today = DateOnly.FromDayNumber(690_000 + from);

        var (stands, afterwards) = (occasion.StandsOn(today), occasion.StandsOn(today.AddDays(later)));

        return stands <= afterwards && stands >= occasion.Date && stands.DayNumber >= today.DayNumber - Occasion.DaysOfGrace
            && (stands == occasion.Date || stands.DayNumber <= today.DayNumber + 400);
    });

    [Fact]
    public void A_gift_is_due_on_its_own_date_else_on_that_of_its_occasion()
    {
        var years = new GiftYears([OpenDay()], []);
        Gift Gift(string occasion, DateOnly? due) => new() { Label = "a", Design = "rod-stand", Occasion = occasion, Due = due };
        var (own, today) = (new DateOnly(2027, 5, 1), new DateOnly(2027, 4, 1));

        var dated = years.Dated([Gift("", null), Gift("open DAY ", null), Gift("open day", own), Gift("", own), Gift("no such day", null)], today);

        Assert.Equal([null, new DateOnly(2027, 6, 19), own, own, null], dated.Select(gift => gift.Due));
    }
}
