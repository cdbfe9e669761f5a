using System.Collections.Immutable;
using CsCheck;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Audit;
using Scrapwright.Core.Calendar.Building;
using Scrapwright.Core.Tests.Calendar;
using Scrapwright.Planning.Calendar;

namespace Scrapwright.Planning.Tests.Calendar;

public sealed class EveningSearchTests
{
    [Fact]
    public void What_it_finds_passes_the_audit_and_is_never_worse_than_where_it_began() => Gen.Int[0, 1_000_000].Sample(
        seed =>
        {
            var problem = RandomProblems.Middling(seed);
            var (facts, ranges) = Of(problem);
            if (First(facts, ranges) is not { } first) return;

            var found = new EveningSearch(facts, ranges, seed, 1).Run(first, double.MaxValue, 4, None(facts), default);

            Assert.Empty(ScheduleAudit.Check(problem, found.ToSchedule(facts, LevelBounds.Of(facts, ranges))));
            Assert.True(LevelValues.Compare(found.Values, first.Values) <= 0);
        },
        iter: 40, threads: 1);

    // By hand: evenings of 120 minutes; 30 to set up, then 10 for every task. The second evening has to set up at least once. Ripping all six on the first evening, 90 minutes, leaves 30 + 60 for the second:
    // ready after 90 minutes of it. With a second set-up on the first evening there is one more on the second too, which is then full.
    [Fact]
    public void One_setting_serves_an_evening()
    {
        var (facts, ranges) = Of(RipAndCrosscut(6));
        var giftByGift = GiftByGift(facts, ranges);
        Assert.Equal(1440 + 120, Ready(facts, giftByGift));

        var found = new EveningSearch(facts, ranges, 1, 1).Run(giftByGift, double.MaxValue, 20, None(facts), default);

        Assert.Equal(1440 + 90, Ready(facts, found));
    }

    // By hand: evenings of 120 minutes. The cabinet takes one of them whole; the three trays take 30 minutes each with one setting of 20 between them, 110 together. All are due when the first evening ends, and alike urgent.
    // Trays first: the cabinet is ready when the second evening ends, 24 hours late. Cabinet first: three trays are a day late.
    [Fact]
    public void What_takes_longest_is_late_rather_than_many_small_things()
    {
        var (facts, ranges) = Of(CabinetAndTrays());
        var cabinetFirst = Placed(facts, ranges, [0, 1, 1, 1]);
        Assert.True(cabinetFirst.Values[0] > 48);

        var found = new EveningSearch(facts, ranges, 1, 1).Run(cabinetFirst, double.MaxValue, 200, None(facts), default);

        Assert.Equal(24, found.Values[0]);
    }

    [Fact]
    public void The_same_seed_gives_the_same_evenings()
    {
        var (facts, ranges) = Of(RandomProblems.Middling(17));
        var first = First(facts, ranges)!;

        Assert.Equal(Found().Start, Found().Start);

        PlacedTasks Found() => new EveningSearch(facts, ranges, 3, 2).Run(first, double.MaxValue, 5, None(facts), default);
    }

    [Fact]
    public void It_ends_when_the_bounds_are_reached()
    {
        var (facts, ranges) = Of(RandomProblems.Middling(17));
        var first = First(facts, ranges)!;

        Assert.Same(first, new EveningSearch(facts, ranges, 3, 1).Run(first, double.MaxValue, int.MaxValue, first.Values, default));
    }

    [Fact]
    public void Without_settings_or_hours_there_are_no_evenings()
    {
        var (facts, ranges) = Of(PublishedInstance.Problem);
        var first = First(facts, ranges)!;

        Assert.Same(first, new EveningSearch(facts, ranges, 1, 2).Run(first, double.MaxValue, 5, None(facts), default));
    }

    [Fact]
    public void A_path_has_every_group_once_and_begins_evenings_where_their_first_task_stands()
    {
        var (facts, ranges) = Of(RipAndCrosscut(6));
        var filling = new EveningFilling(facts, ranges, new Random(1));
        var placement = GiftByGift(facts, ranges);

        var path = EveningPath.Of(placement, filling.Groups, filling.Evenings);

        Assert.Equal(Enumerable.Range(0, 12), path.Groups.Order());
        Assert.Equal([0, 6], path.Before);
        Assert.Equal([0, 1440, 2880], filling.Evenings);
        Assert.All(path.Groups[..6], group => Assert.True(placement.Start[filling.Groups.Members[group][0]] < 120));
    }

    [Fact]
    public void Evenings_that_are_kept_stay_as_they_are()
    {
        var (facts, ranges) = Of(RipAndCrosscut(6));
        var filling = new EveningFilling(facts, ranges, new Random(1));
        var placement = GiftByGift(facts, ranges);
        var alike = new double[facts.Count];

        var again = filling.Run(alike, [.. alike.Select(_ => 1.0)], 1, 20, EveningPath.Of(placement, filling.Groups, filling.Evenings), 1);

        Assert.Equal(placement.Start.Where(s => s < 120).Order(), again!.Start.Where(s => s < 120).Order());
        Assert.All(Enumerable.Range(0, facts.Count).Where(t => placement.Start[t] < 120), t => Assert.Equal(placement.Start[t], again.Start[t]));
    }

    // No bound is ever reached.
    private static long[] None(ScheduleFacts facts) => [.. facts.Levels.Select(_ => -1L)];

    private static (ScheduleFacts, StartRanges) Of(ScheduleProblem problem)
    {
        Assert.Empty(ScheduleProblemFaults.Find(problem));
        var facts = new ScheduleFacts(problem);
        return (facts, new StartRanges(facts, facts.LatestEnd));
    }

    private static PlacedTasks? First(ScheduleFacts facts, StartRanges ranges) => ScheduleBuilder.Best(facts, ranges, new ListPlacing(facts, ranges));

    private static PlacedTasks Placed(ScheduleFacts facts, StartRanges ranges, long[] keys)
    {
        var placing = new ListPlacing(facts, ranges);
        Assert.True(placing.Run(keys));
        return PlacedTasks.Of(facts, placing.Bench);
    }

    /// <summary>Three gifts are ripped and crosscut on the first evening, three on the second.</summary>
    private static PlacedTasks GiftByGift(ScheduleFacts facts, StartRanges ranges) => Placed(facts, ranges, [.. Enumerable.Range(0, 12).Select(i => (long)((i / 2 / 3 * 100) + (i % 2 * 10)))]);

    private static long Ready(ScheduleFacts facts, PlacedTasks some) => some.Values[facts.Levels.IndexOf((ScheduleLevelKind.AllReady, null))];

    private static ScheduleProblem RipAndCrosscut(int gifts) => new()
    {
        HorizonMinutes = 4 * 1440,
        Resources = [new ScheduleResource("maker", 1), new ScheduleResource("table saw", 1), new ScheduleResource("bandsaw", 1)],
        Tasks = [.. Enumerable.Range(0, gifts).SelectMany(gift => new[] { Task($"rip {gift}", 10, "rip", "table saw"), Task($"crosscut {gift}", 10, "crosscut", "bandsaw") })],
        Links = [.. Enumerable.Range(0, gifts).Select(gift => new ScheduleLink($"rip {gift}", $"crosscut {gift}"))],
        Hours = [Evenings],
        SetUps = [new ScheduleSetUp("rip", "table saw", "maker", 30), new ScheduleSetUp("crosscut", "bandsaw", "maker", 30)],
    };

    private static ScheduleProblem CabinetAndTrays() => new()
    {
        HorizonMinutes = 4 * 1440,
        Resources = [new ScheduleResource("maker", 1), new ScheduleResource("table saw", 1)],
        Tasks = [new ScheduleTask { Id = "cabinet", Minutes = 120, Hours = "evenings", Needs = [new ScheduleNeed("maker", 1)] }, .. Enumerable.Range(1, 3).Select(i => Task($"tray {i}", 30, "rip", "table saw"))],
        Hours = [Evenings],
        SetUps = [new ScheduleSetUp("rip", "table saw", "maker", 20)],
        Deliveries = [new ScheduleDelivery("cabinet", [new ScheduleLast("cabinet")], 120, 1), .. Enumerable.Range(1, 3).Select(i => new ScheduleDelivery($"tray {i}", [new ScheduleLast($"tray {i}")], 120, 1))],
    };

    private static ScheduleHours Evenings => new("evenings", [new ScheduleWindow(0, 120), new ScheduleWindow(1440, 1560), new ScheduleWindow(2880, 3000)]);

    private static ScheduleTask Task(string id, int minutes, string setting, string station) =>
        new() { Id = id, Minutes = minutes, Hours = "evenings", SetUp = setting, Needs = [new ScheduleNeed("maker", 1), new ScheduleNeed(station, 1)] };
}
