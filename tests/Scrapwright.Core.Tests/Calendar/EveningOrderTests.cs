using CsCheck;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Audit;
using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Core.Tests.Calendar;

public sealed class EveningOrderTests
{
    [Fact]
    public void All_jointing_comes_before_the_planing_that_follows_it()
    {
        // Two pieces: joint one, plane one, joint the other, plane the other. By hand: three changes become one.
        var problem = new ScheduleProblem
        {
            HorizonMinutes = 500,
            Resources = [new ScheduleResource("maker", 1), new ScheduleResource("jointer", 1), new ScheduleResource("planer", 1)],
            Tasks = [At("joint a", "jointer"), At("plane a", "planer"), At("joint b", "jointer"), At("plane b", "planer")],
            Links = [new ScheduleLink("joint a", "plane a"), new ScheduleLink("joint b", "plane b")],
            Hours = [new ScheduleHours("evening", [new ScheduleWindow(0, 200)])],
            SetUps = [new ScheduleSetUp("jointer", "jointer", "maker", 5), new ScheduleSetUp("planer", "planer", "maker", 5)],
        };
        var (facts, ranges, placed) = Placed(problem, ["joint a", "plane a", "joint b", "plane b"]);

        var ordered = EveningOrder.Of(facts, ranges, placed);

        Assert.Equal((3, 1), (EveningOrder.Changes(facts, placed.Start), EveningOrder.Changes(facts, ordered.Start)));
        Assert.Equal(["joint a", "joint b", "plane a", "plane b"], ordered.ToSchedule(facts, ordered.Values).Tasks.OrderBy(t => t.Start).Select(t => t.Task));
        Assert.Equal(placed.Values, ordered.Values);
    }

    [Fact]
    public void What_can_be_planed_at_once_is_and_what_follows_from_the_glue_comes_last()
    {
        // By hand: both that can be planed at first, then the glue for both, then what follows from the glue: four changes become two.
        var problem = new ScheduleProblem
        {
            HorizonMinutes = 500,
            Resources = [new ScheduleResource("maker", 1), new ScheduleResource("planer", 1), new ScheduleResource("bench", 1)],
            Tasks = [At("plane a", "planer"), At("glue a", "bench"), At("plane b", "planer"), At("glue b", "bench"), At("plane c", "planer")],
            Links = [new ScheduleLink("plane a", "glue a"), new ScheduleLink("plane b", "glue b"), new ScheduleLink("glue a", "plane c", 5)],
            Hours = [new ScheduleHours("evening", [new ScheduleWindow(0, 200)])],
            SetUps = [new ScheduleSetUp("planer", "planer", "maker", 5), new ScheduleSetUp("bench", "bench", "maker", 5)],
        };
        var (facts, ranges, placed) = Placed(problem, ["plane a", "glue a", "plane b", "glue b", "plane c"]);

        var ordered = EveningOrder.Of(facts, ranges, placed);

        Assert.Equal((4, 2), (EveningOrder.Changes(facts, placed.Start), EveningOrder.Changes(facts, ordered.Start)));
        Assert.True(LevelValues.Compare(ordered.Values, placed.Values) <= 0);
    }

    [Fact]
    public void Nothing_that_counts_becomes_worse_and_every_rule_still_holds() => Gen.Int[0, 1_000_000].Sample(
        seed =>
        {
            var problem = RandomProblems.Middling(seed);
            var facts = new ScheduleFacts(problem);
            var ranges = new StartRanges(facts, facts.LatestEnd);
            if (ranges.Stuck != ScheduleFacts.None || ScheduleBuilder.Best(facts, ranges, new ListPlacing(facts, ranges)) is not { } placed) return;

            var ordered = EveningOrder.Of(facts, ranges, placed);

            Assert.Empty(ScheduleAudit.Check(problem, ordered.ToSchedule(facts, LevelBounds.Of(facts, ranges))));
            Assert.True(LevelValues.Compare(ordered.Values, placed.Values) <= 0);
            Assert.True(EveningOrder.Changes(facts, ordered.Start) <= EveningOrder.Changes(facts, placed.Start));
        },
        iter: 300);

    private static ScheduleTask At(string id, string station) => new()
    {
        Id = id,
        Minutes = 10,
        Hours = "evening",
        SetUp = station,
        Needs = [new ScheduleNeed("maker", 1), new ScheduleNeed(station, 1)],
    };

    private static (ScheduleFacts Facts, StartRanges Ranges, PlacedTasks Placed) Placed(ScheduleProblem problem, string[] order)
    {
        var facts = new ScheduleFacts(problem);
        var ranges = new StartRanges(facts, facts.LatestEnd);
        var placing = new ListPlacing(facts, ranges);
        var keys = new long[facts.Count];
        for (var i = 0; i < order.Length; i++) keys[facts.Number[order[i]]] = i;
        Assert.True(placing.Run(keys));
        return (facts, ranges, PlacedTasks.Of(facts, placing.Bench));
    }
}
