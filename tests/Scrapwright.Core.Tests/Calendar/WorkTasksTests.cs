using Scrapwright.Core.Calendar;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Plans;

namespace Scrapwright.Core.Tests.Calendar;

public sealed class WorkTasksTests
{
    private static readonly PlanIndex Full = new(ExamplePlans.Full, ExamplePlans.Designs);

    [Fact]
    public void The_work_of_two_squares_is_as_worked_out_by_hand()
    {
        var work = WorkTasks.Of(ExamplePlans.Squares);

        // The shop's minutes for each piece are 2 (joint, plane), 15 (glue), 4 (flatten), 3 (trim), 2 (crosscut). Half of them are handling.
        // Faces: 1/32 in is one pass where two are usual, so 2 × (1/2 + 1/4) = 1.5 for each of four strips. Edges: two are usual. M2 loses 1/16 in: two passes.
        // Three strips are shorter than the 12 in that the jointer asks for: they are worked by hand.
        // Gluing: four strips and three clamps (10 in with one at each end and no gap above 6 in) where nine are usual: 15 × (1/2 + 7/18) = 13.3.
        // Flattening takes 1/16 in off: two passes. A trim has two cuts, a crosscut into two with a squared end too.
        Assert.Equal(
            [
                ("face-joint-by-hand/Ida", 5), ("face-joint/Ida", 2), ("face-plane/Ida", 6), ("edge-joint-by-hand/Ida", 6), ("edge-joint/Ida", 2), ("plane-to-thickness/Ida", 2), ("glue-up/G1", 14), ("flatten-panel/Ida", 4),
                ("trim-width/Ida", 3), ("crosscut-blanks/Ida", 2),
            ],
            work.Tasks.Where(t => t.Operation < Operation.CutRods && t.Operation != Operation.PlanePanel).Select(t => (t.Id, t.Minutes)));
        Assert.All(work.Tasks, t => Assert.True(t.LeastMinutes <= t.Minutes && t.Minutes <= t.MostMinutes));
        Assert.All(work.Tasks, t => Assert.Equal(["Ida"], t.Gifts.AsEnumerable()));
        Assert.Equal("Glue up G1: Ida", work.Tasks.Single(t => t.GlueUp == "G1").Title);
        Assert.Equal("Joint one face: Ida, 3 pieces", work.Tasks[0].Title);
    }

    [Fact]
    public void Glue_holds_clamps_and_cures_longer_in_the_cold()
    {
        // White glue, from the table: 30 to 60 minutes in the clamps and 24 hours until it may be worked, at 21 °C; all of it twice as long ten degrees colder.
        var warm = WorkTasks.Of(ExamplePlans.Squares);
        var cold = WorkTasks.Of(ExamplePlans.Squares, new() { GlueCelsius = 11 });

        Assert.Equal(new TaskClamps(ExamplePlans.Squares.GlueUps[0].RoughWidth, 3, 60), Glue(warm).Clamps);
        Assert.Equal(new ScheduleLink("glue-up/G1", "flatten-panel/Ida", 1440), LinkFrom(warm, "glue-up/G1"));
        Assert.Equal(120, Glue(cold).Clamps!.HeldMinutes);
        Assert.Equal(new ScheduleLink("glue-up/G1", "flatten-panel/Ida", 2880), LinkFrom(cold, "glue-up/G1"));
        Assert.Equal(10, Glue(warm).LeastCelsius);
        Assert.Equal("shop/10- °C", Glue(warm).Hours);
    }

    [Fact]
    public void The_shops_own_waiting_time_counts_where_it_is_longer_and_where_the_glue_is_not_known()
    {
        var slow = WithShop(shop => shop with { Times = [.. shop.Times.Select(t => t.Operation == Operation.GlueUp ? t with { WaitMinutes = 90 } : t)] });
        var own = WithShop(shop => shop with { Glue = "grandmother's", Times = [new(Operation.GlueUp, 10, 15, 200)] });

        Assert.Equal(90, Glue(WorkTasks.Of(slow)).Clamps!.HeldMinutes);
        Assert.Equal((200, 200), (Glue(WorkTasks.Of(own)).Clamps!.HeldMinutes, LinkFrom(WorkTasks.Of(own), "glue-up/G1").LeastMinutes));
        Assert.Null(Glue(WorkTasks.Of(own)).LeastCelsius);
    }

    [Fact]
    public void Oil_is_wiped_off_in_time_and_dries_between_coats()
    {
        var work = WorkTasks.Of(ExamplePlans.Squares);

        // Drying oil, from the table: three coats, the next after 1 to 2 days, handled after 1 to 3 days. Flood, a quarter of an hour, again, ten minutes, wipe.
        Assert.Equal(
            [
                ("coat1.1", "coat1.2", 15, 30), ("coat1.2", "coat1.3", 10, 20), ("coat1.3", "coat2.1", 2880, null),
                ("coat2.1", "coat2.2", 15, 30), ("coat2.2", "coat2.3", 10, 20), ("coat2.3", "coat3.1", 2880, null),
                ("coat3.1", "coat3.2", 15, 30), ("coat3.2", "coat3.3", 10, 20), ("coat3.3", "after", 4320, (int?)null),
            ],
            work.Links.Where(l => l.Before.StartsWith("finish@", StringComparison.Ordinal)).Select(l => (Tail(l.Before), Tail(l.After), l.LeastMinutes, l.MostMinutes)));
        var last = Assert.Single(work.Gifts.Single().Last);
        Assert.Equal(("after", 0), (Tail(last.Task), last.WaitMinutes));
        Assert.All(work.Tasks.Where(t => t.Id.Contains("/coat", StringComparison.Ordinal)), t => Assert.Equal(("shop/10-30 °C", "finish-drying-oil@finishing"), (t.Hours, t.Setting)));
        Assert.Equal(["drying oil (linseed or tung)", "clean rags", "a metal tin of water for the rags"], work.Tasks[^2].LayOut.AsEnumerable());
        // Buffing is no coat: any hour will do, and nothing is set up for it.
        Assert.Equal(("shop", "", "a clean dry cloth"), (work.Tasks[^1].Hours, work.Tasks[^1].Setting, work.Tasks[^1].LayOut.Single()));

        static string Tail(string id) => id[(id.LastIndexOf('/') + 1)..];
    }

    [Fact]
    public void A_brushed_finish_is_ready_when_the_last_coat_is_dry()
    {
        var work = WorkTasks.Of(WithShop(shop => shop with { Finish = "shellac" }));

        // Shellac, from the table: three coats, half an hour to an hour between, handled after 2 to 12 hours; sanded lightly before the second and third, without a wait.
        Assert.Equal([60, 60], work.Links.Where(l => l.Before.StartsWith("finish@", StringComparison.Ordinal)).Select(l => l.LeastMinutes));
        Assert.Equal(3, work.Tasks.Count(t => t.Operation == Operation.Finish));
        Assert.Equal(12 * 60, Assert.Single(work.Gifts.Single().Last).WaitMinutes);
        Assert.Contains("Sand lightly", work.Tasks[^1].Title, StringComparison.Ordinal);
    }

    [Fact]
    public void A_task_follows_the_one_that_gave_its_pieces_and_nothing_goes_in_a_circle()
    {
        foreach (var (plan, work) in new[] { (ExamplePlans.Squares, WorkTasks.Of(ExamplePlans.Squares)), (ExamplePlans.Full, WorkTasks.Of(Full)) })
        {
            var place = work.Tasks.Select((t, i) => (t.Id, i)).ToDictionary(t => t.Id, t => t.i);
            Assert.All(work.Links, l => Assert.True(place[l.Before] < place[l.After], $"{l.Before} before {l.After}"));
            Assert.Equal(work.Links.DistinctBy(l => (l.Before, l.After)), work.Links);

            // From the plan's steps alone: who made a piece last, and who takes it next.
            var maker = new Dictionary<string, int>();
            foreach (var step in plan.Steps)
            {
                foreach (var piece in step.Works.SelectMany(w => w.In).Where(maker.ContainsKey))
                {
                    var after = work.Tasks.First(t => t.Steps.Contains(step.Number) && t.Pieces.Contains(piece));
                    Assert.Contains(work.Links, l => l.After == after.Id && work.Tasks[place[l.Before]].Steps.Contains(maker[piece]));
                }

                foreach (var piece in step.Works.SelectMany(w => w.Out)) maker[piece.Id] = step.Number;
            }
        }
    }

    [Fact]
    public void Every_work_is_in_one_task_at_its_station_with_a_setting()
    {
        var work = WorkTasks.Of(Full);

        foreach (var step in ExamplePlans.Full.Steps)
        {
            var tasks = work.Tasks.Where(t => t.Steps.Contains(step.Number) && (t.Operation != Operation.Finish || t.Id.EndsWith("coat1.1", StringComparison.Ordinal))).ToArray();
            Assert.Equal(step.Works.SelectMany(w => w.In).Order(), tasks.SelectMany(t => t.Pieces).Order());
            Assert.All(tasks, t => Assert.Equal(step.Operation, t.Operation));
            Assert.Equal(
                step.Works.Where(w => w.Workaround == Workaround.HandTool).SelectMany(w => w.In).Order(),
                tasks.Where(t => t.Station == Station.HandTools && step.Station != Station.HandTools).SelectMany(t => t.Pieces).Order());
        }

        Assert.All(work.Tasks.Where(t => !t.Id.EndsWith("/after", StringComparison.Ordinal)), t => Assert.Equal(t.Station, work.Settings.Single(s => s.Key == t.Setting).Station));
        Assert.Equal(work.Tasks.Select(t => t.Id).Distinct(), work.Tasks.Select(t => t.Id));
        Assert.Contains(work.Tasks, t => t.Station == Station.HandTools && !t.NeedsMachine);
        Assert.Contains(work.Tasks, t => t.Id.StartsWith("edge-joint-2/", StringComparison.Ordinal));
    }

    [Fact]
    public void A_task_too_long_for_an_evening_is_divided_between_pieces_and_a_glue_up_never()
    {
        // Set-up takes 5: five minutes are left for four strips of a minute and a half each.
        var work = WorkTasks.Of(ExamplePlans.Squares, new() { LongestMachineMinutes = 10, LongestMinutes = 15 });

        var parts = work.Tasks.Where(t => t.Operation == Operation.FacePlane).ToArray();
        Assert.Equal(["face-plane/Ida#1", "face-plane/Ida#2"], parts.Select(t => t.Id));
        Assert.Equal(["W1", "W2", "M1", "M2"], parts.SelectMany(t => t.Pieces));
        Assert.Equal([3, 3], parts.Select(t => t.Minutes));
        Assert.Single(work.Tasks, t => t.Operation == Operation.GlueUp);
        // Those that follow wait only for the part with their pieces.
        Assert.Equal(["edge-joint-by-hand/Ida"], work.Links.Where(l => l.Before == "face-plane/Ida#1").Select(l => l.After));
        Assert.Equal(["edge-joint-by-hand/Ida", "edge-joint/Ida"], work.Links.Where(l => l.Before == "face-plane/Ida#2").Select(l => l.After).Order());
    }

    [Fact]
    public void What_is_glued_or_milled_is_not_to_be_done_again()
    {
        var plan = ExamplePlans.Squares;
        var glued = WorkTasks.Of(With(DoneMarks.Glue(plan, "G1")));
        var milled = WorkTasks.Of(With(DoneMarks.Mill(plan, plan.Request.Choices, "M2")));

        Assert.Equal("flatten-panel/Ida", glued.Tasks[0].Id);
        Assert.DoesNotContain(glued.Links, l => l.After == "flatten-panel/Ida");
        Assert.Equal(["W1", "W2", "M1"], milled.Tasks.Single(t => t.Operation == Operation.FacePlane).Pieces.AsEnumerable());
        Assert.DoesNotContain(milled.Tasks, t => t.Id == "face-joint/Ida");
        // Its glue-up's strips are still to be made alike.
        Assert.Equal(["M2"], milled.Tasks.Single(t => t.Operation == Operation.PlaneToThickness).Pieces.AsEnumerable());

        Plan With(MakerChoices choices) => plan with { Request = plan.Request with { Choices = choices } };
    }

    [Fact]
    public void A_damp_pile_has_to_lie_in_the_shop_first()
    {
        var damp = WorkTasks.Of(WithShop(shop => shop with { PileMoisturePercent = 20 }));

        Assert.All(damp.Tasks, t => Assert.Equal(t.Operation == Operation.FaceJoint, t.SettleMinutes > 0));
        // 22 mm of sugar maple: weeks rather than days, docs/science/acclimatisation.md.
        Assert.InRange(damp.Tasks[0].SettleMinutes / 1440, 14, 60);
        Assert.All(WorkTasks.Of(ExamplePlans.Squares).Tasks, t => Assert.Equal(0, t.SettleMinutes));
    }

    private static Plan WithShop(Func<Shop, Shop> change)
    {
        var plan = ExamplePlans.Squares;
        return plan with { Request = plan.Request with { Shop = change(plan.Request.Shop) } };
    }

    private static WorkTask Glue(WorkTasks work) => work.Tasks.Single(t => t.GlueUp == "G1");

    private static ScheduleLink LinkFrom(WorkTasks work, string task) => work.Links.Single(l => l.Before == task);
}
