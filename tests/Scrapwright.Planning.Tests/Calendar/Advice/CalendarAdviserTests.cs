using System.Collections.Immutable;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Audit;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Files;
using Scrapwright.Planning.Calendar.Advice;

namespace Scrapwright.Planning.Tests.Calendar.Advice;

public sealed class CalendarAdviserTests(ExampleCalendars example) : IClassFixture<ExampleCalendars>
{
    [Fact]
    public void When_all_is_in_time_nothing_is_asked_and_what_helps_makes_it_sooner_by_days()
    {
        Assert.DoesNotContain(example.Early.Gifts, g => g.IsLate);
        Assert.Empty(example.EarlyWhy.Value.Alternatives);
        Assert.NotEmpty(example.EarlyWhy.Value.HoldUps);
        Assert.All(example.EarlyWhy.Value.HoldUps, h => Assert.True(h.SoonerDays >= 1 && h.InTime.IsEmpty && h.HoursLessLate == 0));
        Assert.Equal(example.EarlyWhy.Value.HoldUps.Select(AllReady).Order(), example.EarlyWhy.Value.HoldUps.Select(AllReady));
    }

    // Three coats of oil dry for two days each: what dries in hours must show.
    [Fact]
    public void A_quicker_finish_helps_where_oil_dries_for_days() =>
        Assert.Contains(example.EarlyWhy.Value.HoldUps, h => h.Kind == OtherwiseKind.Finish && h.SoonerDays >= 3);

    [Fact]
    public void Late_gifts_come_with_ways_out_those_first_that_give_up_least()
    {
        var late = example.Late.Gifts.Where(g => g.IsLate).Select(g => g.Gift).ToHashSet();
        int[] givenUp = [.. example.LateWhy.Value.Alternatives.Select(a => a.LeftOutPriority ?? 10)];

        Assert.NotEmpty(late);
        Assert.NotEmpty(example.LateWhy.Value.Alternatives);
        Assert.Equal(givenUp.OrderDescending(), givenUp);
        Assert.All(example.LateWhy.Value.Alternatives, a => Assert.True(a.InTime.Length > 0 && a.InTime.All(late.Contains) && !a.InTime.Intersect(a.LateThen).Any()));
        Assert.All(example.LateWhy.Value.Alternatives, a => Assert.EndsWith("?", a.Question, StringComparison.Ordinal));
        Assert.All(example.LateWhy.Value.Alternatives, a => Assert.DoesNotContain(a.LeftOut, a.InTime));
    }

    // Followed by hand: with that finish for the whole shop the calendar made anew has those gifts in time.
    [Fact]
    public async Task An_answer_that_is_followed_holds()
    {
        var answer = example.LateWhy.Value.Alternatives.First(a => a.Kind == OtherwiseKind.Finish && a.Question.Contains("waterborne", StringComparison.Ordinal));
        var request = example.Plan.Request with { Shop = example.Plan.Request.Shop with { Finish = "waterborne-varnish" } };
        var calendar = await ExampleCalendars.CalendarAsync(example.LateRequest with { Plan = example.Plan with { Request = request } });

        Assert.Empty(ScheduleAudit.Check(calendar.Problem, calendar.Schedule));
        Assert.All(answer.InTime, gift => Assert.False(calendar.Gifts.Single(g => g.Gift == gift).IsLate));
    }

    [Fact]
    public async Task What_there_is_no_time_for_is_named()
    {
        var why = await CalendarAdviser.WhyAsync(example.LateRequest, example.Late, new PlanLimits { Seconds = 0.01 });

        Assert.Empty(why.HoldUps);
        Assert.Empty(why.NoGain);
        Assert.Equal(new CalendarVariants(example.LateRequest, example.Late).All().Select(v => v.What), why.NotTried);
    }

    [Fact]
    public void A_gift_that_counts_more_than_every_late_one_is_never_left_out()
    {
        var most = example.Late.Gifts.Where(g => g.IsLate).Min(g => example.LateRequest.FindGift(g.Gift)!.Priority);
        var left = new CalendarVariants(example.LateRequest, example.Late).All().Where(v => v.Kind == OtherwiseKind.LeaveOut).Select(v => v.LeftOut!).ToArray();

        Assert.NotEmpty(left);
        Assert.All(left, gift => Assert.True(gift.Priority >= most));
        Assert.Equal(left.Select(g => g.Priority).OrderDescending(), left.Select(g => g.Priority));
    }

    [Fact]
    public void A_late_gift_may_have_fewer_pieces_or_be_another_thing_for_the_same_purpose()
    {
        var plan = example.Plan with { Request = ExampleWorkshop.Request };
        var variants = new OtherDesigns(example.LateRequest with { Plan = plan }).For(ExampleWorkshop.Request.Gifts.Where(g => g.Label is "gate-stand" or "tea-squares")).ToArray();

        // By hand: the stand holds gate-squares, which the other stand does too; six squares become three.
        Assert.Equal(["Would a stand with rods do for gate-stand instead of a stand with U-shaped sides", "Would 3 pieces do in tea-squares instead of 6"], variants.Select(v => v.Question));
        Assert.All(variants, v => Assert.All(v.Replan!.DeriveDesigns(), d => Assert.IsType<Core.Designs.DesignOutcome.Derived>(d.Outcome)));
        Assert.Equal("gate-squares", variants[0].Replan!.Gifts.Single(g => g.Label == "gate-stand").Options["holds"]);
    }

    [Fact]
    public async Task Fewer_pieces_are_planned_anew_and_take_less_time()
    {
        var gift = example.Plan.Request.Gifts.First(g => g.Design == "striped-squares");
        var variant = new OtherDesigns(example.LateRequest).For([gift]).First(v => v.What.Contains("pieces", StringComparison.Ordinal));

        var plan = Assert.IsType<PlanOutcome.Planned>(await Planner.PlanAsync(variant.Replan!, ExampleCalendars.Quick, example.Plan)).Plan;
        var fewer = await ExampleCalendars.CalendarAsync(example.LateRequest with { Plan = plan });

        Assert.Equal(example.Plan.Made.Select(m => m.Gift), plan.Made.Select(m => m.Gift));
        Assert.True(Minutes(fewer) < Minutes(example.Late));

        static int Minutes(WorkCalendar calendar) => calendar.Tasks.Sum(t => t.Task.Minutes);
    }

    [Fact]
    public void A_finish_that_a_gift_names_itself_is_not_changed_for_the_whole_shop()
    {
        var plan = example.Plan with { Request = example.Plan.Request with { Gifts = [.. example.Plan.Request.Gifts.Select(g => g with { Finish = "drying-oil" })] } };

        Assert.DoesNotContain(new CalendarVariants(example.EarlyRequest with { Plan = plan }, example.Early).All(), v => v.Kind == OtherwiseKind.Finish);
        Assert.Contains(new CalendarVariants(example.EarlyRequest, example.Early).All(), v => v.Kind == OtherwiseKind.Finish);
    }

    [Fact]
    public void A_week_without_a_free_day_is_offered_none()
    {
        ImmutableArray<HourRange> evening = [new(new(18, 0), new(21, 0))];
        var week = Enum.GetValues<DayOfWeek>().Select(day => new DayHours(day, evening));
        var request = example.LateRequest with { Hours = example.LateRequest.Hours with { Week = [.. week] } };

        Assert.DoesNotContain(new CalendarVariants(request, example.Late).All(), v => v.Kind is OtherwiseKind.WeeklyEvening or OtherwiseKind.OneEvening);
    }

    [Fact]
    public void An_evening_on_a_day_away_is_not_asked_for()
    {
        var first = DateOnly.FromDateTime(example.Late.Start.DateTime);
        var away = example.LateRequest with { Hours = example.LateRequest.Hours with { Exceptions = [new(first, first.AddDays(6), [], "away")] } };

        Assert.Contains(new CalendarVariants(example.LateRequest, example.Late).All(), v => v.Kind == OtherwiseKind.OneEvening);
        Assert.DoesNotContain(new CalendarVariants(away, example.Late).All(), v => v.Kind == OtherwiseKind.OneEvening);
    }

    private static long AllReady(HoldUp holdUp) => holdUp.Levels.Single(l => l.Kind == ScheduleLevelKind.AllReady).Value;
}
