using Scrapwright.Core.Calendar;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Plans;

namespace Scrapwright.Core.Tests.Calendar;

public sealed class PacedTasksTests
{
    private static readonly DateOnly Day = new(2027, 5, 4);

    // Nine readings of twice as long: 2^(9/12) = 1.682; all alike, so the spread is 0.905 to 1.105.
    private static readonly TimeReading[] Slow = [.. Enumerable.Repeat(new TimeReading(Day, Operation.GlueUp, 20, 40), 9)];

    [Fact]
    public void A_task_takes_the_makers_own_pace_and_keeps_what_is_usual_beside_it()
    {
        var usual = WorkTasks.Of(ExamplePlans.Squares);
        var paced = WorkTasks.Of(ExamplePlans.Squares, new() { Paces = ShopPaces.Of(Slow) });

        // The usual glue-up is 15 × (1/2 + 7/18) = 13.33 minutes, see the work of two squares: 13.33 × 1.682 = 22.43, least 20.30, most 24.78.
        Assert.Equal((14, 14), Minutes(usual));
        Assert.Equal((23, 14), Minutes(paced));
        var glue = paced.Tasks.Single(t => t.Operation == Operation.GlueUp);
        Assert.Equal((20, 25), (glue.LeastMinutes, glue.MostMinutes));
        Assert.Equal(usual.Tasks.Where(t => t.Operation != Operation.GlueUp).Select(t => t.Minutes), paced.Tasks.Where(t => t.Operation != Operation.GlueUp).Select(t => t.Minutes));
        Assert.All(usual.Tasks, t => Assert.Equal(t.Minutes, t.UsualMinutes));
    }

    [Fact]
    public void Work_by_hand_and_finish_are_known_by_their_settings()
    {
        var tasks = WorkTasks.Of(ExamplePlans.Squares).Tasks;

        Assert.Equal(TimeReading.ByHand, tasks.Single(t => t.Id == "face-joint-by-hand/Ida").PaceSetting);
        Assert.Equal("", tasks.Single(t => t.Id == "face-joint/Ida").PaceSetting);
        Assert.All(tasks.Where(t => t.Operation == Operation.Finish), t => Assert.Equal("drying-oil", t.PaceSetting));
    }

    [Fact]
    public void A_calendar_says_what_it_was_made_with_and_so_does_its_file()
    {
        var problem = Assert.IsType<CalendarMaking.Made>(CalendarProblem.Make(new CalendarRequest
        {
            Plan = ExamplePlans.Squares,
            Hours = new WorkHours { TimeZone = "Europe/Dublin" },
            HomeZone = TimeZoneInfo.Utc,
            Start = DateTimeOffset.Parse("2027-05-03T12:00Z"),
            Times = [.. Slow],
        })).Problem;

        var read = CalendarJson.Read(CalendarJson.Write(CalendarBench.Calendar(problem)));

        Assert.Equal(Slow, read.Times.AsEnumerable());
        Assert.Equal(23, read.Problem.Tasks.Single(t => t.Id == "glue-up/G1").Minutes);
        Assert.Equal(14, read.Tasks.Single(t => t.Task.Id == "glue-up/G1").Task.UsualMinutes);
    }

    [Theory]
    [InlineData(20, 40, 6, "takes you 1.59 times as long, from 6 readings")]
    [InlineData(20, 10, 1, "takes you 0.84 times as long, from 1 reading")]
    [InlineData(20, 21, 2, "takes you as long as usual, from 2 readings")]
    public void A_pace_in_words(int planned, int took, int readings, string words) =>
        Assert.Equal(words, PaceWords.Of(ShopPaces.Of(Enumerable.Repeat(new TimeReading(Day, Operation.Sand, planned, took), readings)).For(Operation.Sand)));

    [Fact]
    public void Work_in_words()
    {
        Assert.Equal("Joint edges, by hand", PaceWords.Of(Operation.EdgeJoint, TimeReading.ByHand));
        Assert.Equal("Joint edges", PaceWords.Of(Operation.EdgeJoint, ""));
        Assert.StartsWith("Apply finish, ", PaceWords.Of(Operation.Finish, "drying-oil"), StringComparison.Ordinal);
    }

    private static (int, int?) Minutes(WorkTasks work) => work.Tasks.Where(t => t.Operation == Operation.GlueUp).Select(t => (t.Minutes, t.UsualMinutes)).Single();
}
