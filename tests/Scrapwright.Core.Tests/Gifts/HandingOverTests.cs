using System.Collections.Immutable;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Core.Tests.Gifts;

public sealed class HandingOverTests
{
    private static readonly DateOnly Day = new(2027, 6, 19);

    private static readonly GiftYears Years = new(
        [new Occasion { Name = "Open day", Date = Day, Repeats = new Repetition.OnWeekday(6, 3, DayOfWeek.Saturday) }, new Occasion { Name = "Wedding", Date = new(2027, 8, 7) }], []);

    private static readonly ImmutableArray<Gift> Gifts =
    [
        new() { Label = "squares", Recipient = " gate keeper", Circle = "helpers", Design = "striped-squares", Occasion = "open day", Options = Gift("").Options.Add("count", "4") },
        new() { Label = "stand", Recipient = "gate keeper", Design = "rod-stand", Occasion = "Open day", Options = Gift("").Options.Add("holds", "Squares") },
        new() { Label = "nobody", Design = "u-stand", Occasion = "Open day" },
        new() { Label = "bowl", Design = "u-stand", Occasion = "Wedding" },
        new() { Label = "other", Design = "u-stand" },
    ];

    private static Gift Gift(string label) => new() { Label = label, Design = "u-stand" };

    private static HandOver Of(string occasion, DateOnly? on = null, DateOnly? today = null, params ImmutableArray<string> stay) =>
        HandingOver.Of(Gifts, Years, occasion, on, stay, today ?? Day);

    [Fact]
    public void Gifts_of_the_occasion_go_to_what_was_given_and_it_goes_on_to_its_next_date()
    {
        var done = Assert.IsType<HandOver.Done>(Of("OPEN DAY"));

        Assert.Equal([("gate keeper", "striped-squares"), ("gate keeper", "rod-stand"), ("nobody", "u-stand")], done.Given.Select(g => (g.Recipient, g.Design)));
        Assert.All(done.Given, given => Assert.Equal((Day, "Open day"), (given.Date, given.Occasion)));
        Assert.Equal(("helpers", "4"), (done.Given[0].Circle, done.Given[0].Options["count"]));
        Assert.Equal(["bowl", "other"], done.Left.Select(g => g.Label));
        Assert.Equal(new DateOnly(2028, 6, 17), done.Occasion.Date);
    }

    [Fact]
    public void No_gift_is_lost_or_doubled()
    {
        foreach (var occasion in Years.Occasions)
        {
            var done = Assert.IsType<HandOver.Done>(Of(occasion.Name, today: occasion.Date));

            Assert.Equal(Gifts.Length, done.Given.Length + done.Left.Length);
        }
    }

    [Fact]
    public void What_does_not_come_back_stays_on_its_date() =>
        Assert.Equal(new DateOnly(2027, 8, 7), Assert.IsType<HandOver.Done>(Of("Wedding", today: new(2027, 8, 8))).Occasion.Date);

    [Fact]
    public void Gifts_that_were_not_given_stay_on_the_list()
    {
        var done = Assert.IsType<HandOver.Done>(Of("Open day", null, null, "nobody"));

        Assert.Equal(["nobody", "bowl", "other"], done.Left.Select(g => g.Label));
    }

    [Fact]
    public void They_can_be_given_on_another_day()
    {
        var done = Assert.IsType<HandOver.Done>(Of("Open day", on: Day.AddDays(-3)));

        Assert.All(done.Given, given => Assert.Equal(Day.AddDays(-3), given.Date));
        Assert.Equal(new DateOnly(2028, 6, 17), done.Occasion.Date);
    }

    [Fact]
    public void What_is_wrong_is_told_and_nothing_is_given()
    {
        Assert.Equal(new HandOver.NoOccasion("Open day"), Of("open dya"));
        Assert.Equal(new HandOver.TooEarly(Day), Of("Open day", today: Day.AddDays(-1)));
        Assert.Equal(new HandOver.TooEarly(Day.AddDays(1)), Of("Open day", on: Day.AddDays(1)));
        Assert.Equal(new HandOver.NoSuchGift("stnad", "stand"), Of("Open day", null, null, "stnad"));
        Assert.Equal(new HandOver.HoldsOne("stand", "squares"), Of("Open day", null, null, "stand"));
        Assert.Equal(new HandOver.NoGifts(), Of("Wedding", null, new(2027, 8, 8), "bowl"));
    }
}
