using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Audit;
using Scrapwright.Core.Calendar.Worth;
using Scrapwright.Core.Shops;
using Scrapwright.Planning.Calendar.Advice;

namespace Scrapwright.Planning.Tests.Calendar.Advice;

public sealed class WorthVariantsTests(ExampleCalendars example) : IClassFixture<ExampleCalendars>
{
    private string Late => example.Late.Gifts.First(g => g.IsLate).Gift;

    [Fact]
    public void Without_prices_nothing_is_to_be_bought_and_only_jigs_are_made()
    {
        var variants = new WorthVariants(example.LateRequest, [Late]);

        Assert.Empty(variants.Bought());
        Assert.Equal([OtherwiseKind.MakeJig, OtherwiseKind.MakeJig], variants.Jigs().Select(v => v.Kind));
    }

    [Fact]
    public void A_bought_gift_has_no_work_of_its_own_and_is_ready_when_it_is_here()
    {
        var request = example.LateRequest with { Prices = [new(PriceKind.Gift, Late, 45, 2)], HourWorth = new(18, "€") };
        var variant = Assert.Single(new WorthVariants(request, [Late]).Bought());
        var made = Made(request);

        var bought = variant.Change!(made)!;

        Assert.Equal(OtherwiseKind.BuyGift, variant.Kind);
        Assert.StartsWith($"Would you buy {Late} for €45.00, here on ", variant.Question, StringComparison.Ordinal);
        Assert.All(made.Work.Tasks.Where(t => t.Gifts is [var only] && only == Late), t => Assert.DoesNotContain(bought.Schedule.Tasks, s => s.Id == t.Id));
        // When the second day after the start is over.
        var last = Assert.Single(bought.Schedule.Deliveries.Single(d => d.Id == Late).Last);
        Assert.Equal(made.Windows.MinuteOf(DateOnly.FromDateTime(made.Windows.Start.DateTime).AddDays(3)), bought.Schedule.Tasks.Single(t => t.Id == last.Task).FixedStart);
        Assert.Empty(ScheduleProblemFaults.Find(bought.Schedule));
        var schedule = Assert.IsType<ScheduleOutcome.Scheduled>(ScheduleBuilder.Build(bought.Schedule)).Schedule;
        Assert.Empty(ScheduleAudit.Check(bought.Schedule, schedule));
    }

    [Fact]
    public void What_comes_after_the_horizon_is_no_way_out()
    {
        var request = example.LateRequest with { Prices = [new(PriceKind.Gift, Late, 45, 3000)] };

        Assert.Null(Assert.Single(new WorthVariants(request, [Late]).Bought()).Change!(Made(request)));
    }

    [Fact]
    public void Work_that_waits_for_a_bought_part_waits_until_it_is_here()
    {
        var request = example.LateRequest with { Plan = example.Plan };
        var made = Made(request);
        var use = new PieceUse(example.Plan);
        var (gift, part) = example.Plan.Made.SelectMany(m => m.Parts.Select(p => (m.Gift, p.Part))).Distinct()
            .First(p => made.Schedule.Links.Any(l => IsOnly(l.Before, p) && !IsOnly(l.After, p)));
        var priced = request with { Prices = [new(PriceKind.Part, $"{gift}/{part}", 5, 1)] };

        var variant = Assert.Single(new WorthVariants(priced, []).Bought());
        var bought = variant.Change!(Made(priced))!;

        Assert.Equal(OtherwiseKind.BuyPart, variant.Kind);
        Assert.Contains(bought.Schedule.Links, l => l.Before == $"bought/{gift}/{part}");
        Assert.All(made.Work.Tasks.Where(t => use.IsOnlyFor(t, gift, part)), t => Assert.DoesNotContain(bought.Schedule.Tasks, s => s.Id == t.Id));
        Assert.Empty(ScheduleProblemFaults.Find(bought.Schedule));

        bool IsOnly(string task, (string Gift, string Part) of) => made.Work.Tasks.Single(t => t.Id == task) is var known && use.IsOnlyFor(known, of.Gift, of.Part);
    }

    [Fact]
    public void A_jig_that_is_made_first_makes_its_work_quicker_and_the_work_waits_for_it()
    {
        var jig = new Jig { Key = "sanding-tray", Name = "Sanding tray", Operations = [Operation.Sand], EachSeconds = 60, SetUpMinutes = 2, MakeMinutes = 400 };
        var made = Made(example.LateRequest);

        var with = JigWork.Made(made, jig)!;

        // 400 minutes do not fit into one evening of three hours or a Saturday afternoon of four.
        var making = with.Schedule.Tasks.Where(t => t.Id.StartsWith("make/", StringComparison.Ordinal)).ToArray();
        Assert.Equal((2, 400), (making.Length, making.Sum(t => t.Minutes)));
        foreach (var task in made.Work.Tasks.Where(t => t.Operation == Operation.Sand && made.Schedule.Tasks.Any(s => s.Id == t.Id)))
        {
            var minutes = with.Schedule.Tasks.Single(t => t.Id == task.Id).Minutes;
            Assert.Equal(Math.Max(1, task.Minutes - (Math.Min(task.Pieces.Length * 60, task.Minutes * 30) / 60)), minutes);
            Assert.Contains(with.Schedule.Links, l => l.Before == making[^1].Id && l.After == task.Id);
        }

        Assert.Empty(ScheduleProblemFaults.Find(with.Schedule));
        var schedule = Assert.IsType<ScheduleOutcome.Scheduled>(ScheduleBuilder.Build(with.Schedule)).Schedule;
        Assert.Empty(ScheduleAudit.Check(with.Schedule, schedule));
    }

    [Fact]
    public void A_jig_the_shop_has_is_not_proposed()
    {
        var first = new WorthVariants(example.LateRequest, []).Jigs().First().What;
        var owned = example.LateRequest with { Jigs = [.. JigTable.All.Select(j => j with { IsOwned = true })] };

        Assert.Contains("made first", first, StringComparison.Ordinal);
        Assert.Empty(new WorthVariants(owned, []).Jigs());
    }

    // Everything late is bought and here tomorrow: then it is in time, whatever the search finds for the rest.
    [Fact]
    public async Task A_late_gift_that_can_be_bought_in_time_is_asked_about()
    {
        var request = example.LateRequest with { Prices = [new(PriceKind.Gift, Late, 45, 1)] };

        var why = await CalendarAdviser.WhyAsync(request, example.Late, new PlanLimits { Seconds = 60, Deterministic = true });

        var answer = Assert.Single(why.Alternatives, a => a.Kind == OtherwiseKind.BuyGift);
        Assert.Contains(Late, answer.InTime);
        Assert.Null(answer.LeftOutPriority);
    }

    private static CalendarProblem Made(CalendarRequest request) => Assert.IsType<CalendarMaking.Made>(CalendarProblem.Make(request)).Problem;
}
