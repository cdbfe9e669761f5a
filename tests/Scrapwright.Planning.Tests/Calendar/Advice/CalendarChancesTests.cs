using Scrapwright.Core.Calendar;
using Scrapwright.Planning.Calendar.Advice;

namespace Scrapwright.Planning.Tests.Calendar.Advice;

public sealed class CalendarChancesTests
{
    private static readonly ChanceRules OwnPace = new() { QuickPaceFactor = 1, SlowPaceFactor = 1 };

    // Two tasks of at least 1000 min, the more the rarer up to 2000: x and y with density 2(1 - x) on 0 to 1.
    // By hand: P(x + y ≤ 1) = ∫ 2(1 - x)(1 - x²) dx = 5/6, and P(x + y ≤ 1/2) = ∫ 2(1 - x)(3/4 - x - x²) dx from 0 to 1/2 = 11/32.
    [Theory]
    [InlineData(3000, 833)]
    [InlineData(2500, 343)]
    public void Two_durations_against_a_deadline_are_as_worked_out_by_hand(int due, int perMille)
    {
        var calendar = SmallCalendar.Of([(1000, 1000, 2000), (1000, 1000, 2000)], [], due);

        var chance = CalendarChances.Of(calendar, OwnPace with { Runs = 100_000, StartRuns = 1 });

        Assert.InRange(chance.Gifts.Single().PerMille!.Value, perMille - 10, perMille + 10);
        Assert.Equal(chance.Gifts.Single().PerMille, chance.All.PerMille);
    }

    // By hand: an evening of 150 min. The second task of 60 min has room when the first takes 90 or less: 1 - (1/2)² = 3/4. Else it is done on the next evening, Tuesday, and ready by Wednesday.
    [Fact]
    public void What_does_not_fit_goes_on_on_the_next_evening()
    {
        var calendar = SmallCalendar.Of([(60, 60, 120), (60, 60, 60)], [new(0, 150), new(1440, 1590)], 360);

        var gift = CalendarChances.Of(calendar, OwnPace with { Runs = 20_000 }).Gifts.Single();

        Assert.InRange(gift.PerMille!.Value, 740, 760);
        Assert.Equal(new DateOnly(2027, 5, 5), gift.ReadyBy);
        Assert.Equal(calendar.Start, gift.StartBy);
        Assert.Null(gift.SafeStartBy);
        Assert.Equal((1, 0), (gift.EveningsToKeepFree, gift.EveningsLeft));
    }

    [Fact]
    public void The_last_evening_to_start_leaves_as_many_evenings_as_are_needed()
    {
        // Two evenings' work by plan, in one of four cases an evening more; due before the sixth evening begins.
        ScheduleWindow[] week = [.. Enumerable.Range(0, 9).Select(day => new ScheduleWindow(day * 1440, (day * 1440) + 150))];
        var calendar = SmallCalendar.Of([(100, 100, 100), (60, 60, 120), (60, 60, 60)], week, 5 * 1440);

        var gift = CalendarChances.Of(calendar, OwnPace).Gifts.Single();

        Assert.Equal(calendar.Start.AddDays(3), gift.StartBy);
        Assert.Equal(calendar.Start.AddDays(2), gift.SafeStartBy);
        Assert.Equal(1000, gift.PerMille);
        Assert.Equal((1, 3), (gift.EveningsToKeepFree, gift.EveningsLeft));
    }

    [Theory]
    [InlineData(200, 1000)]
    [InlineData(199, 0)]
    public void Without_spread_it_is_certain(int due, int perMille)
    {
        var calendar = SmallCalendar.Of([(50, 100, 200), (50, 100, 200)], [], due);

        Assert.Equal(perMille, CalendarChances.Of(calendar, new ChanceRules { SpreadFactor = 0, Runs = 50 }).All.PerMille);
    }

    // In a chain that is in time by plan, a run that is late stays late when all strays farther.
    [Fact]
    public void More_spread_never_raises_the_chance()
    {
        var calendar = SmallCalendar.Of([(500, 1000, 2000), (700, 1000, 1600), (900, 1000, 3000)], [], 3300);

        int[] chances = [.. new[] { 0, 0.25, 0.5, 1, 1.5, 2 }.Select(spread => CalendarChances.Of(calendar, new ChanceRules { SpreadFactor = spread, StartRuns = 1 }).All.PerMille!.Value)];

        Assert.Equal(chances.OrderDescending(), chances);
        Assert.Equal(1000, chances[0]);
        Assert.InRange(chances[^1], 1, 600);
    }

    [Fact]
    public void A_shared_pace_is_riskier_than_luck_that_evens_out()
    {
        var calendar = SmallCalendar.Of([.. Enumerable.Repeat((950, 1000, 1100), 10)], [], 11_000);

        var own = CalendarChances.Of(calendar, OwnPace).All.PerMille;
        var shared = CalendarChances.Of(calendar, new ChanceRules()).All.PerMille;

        Assert.Equal(1000, own);
        Assert.InRange(shared!.Value, 500, 900);
    }

    [Fact]
    public void The_same_seed_gives_the_same_and_a_gift_without_a_date_has_no_chance()
    {
        var calendar = SmallCalendar.Of([(50, 100, 200), (50, 100, 200)], [], null);

        var (one, other) = (CalendarChances.Of(calendar), CalendarChances.Of(calendar));

        Assert.Equal(one.All, other.All);
        Assert.Null(one.All.PerMille);
        Assert.Null(one.Gifts.Single().StartBy);
        Assert.Equal(new DateOnly(2027, 5, 4), one.Gifts.Single().ReadyBy);
    }
}
