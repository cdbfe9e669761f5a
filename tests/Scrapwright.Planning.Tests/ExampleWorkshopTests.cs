using Scrapwright.Core.Plans;
using Scrapwright.Files;

namespace Scrapwright.Planning.Tests;

public sealed class ExampleWorkshopTests
{
    [Fact]
    public async Task Every_gift_of_the_example_is_made_and_the_plan_holds()
    {
        var plan = await Requests.PlanOf(ExampleWorkshop.Request, new PlanLimits { Seconds = 3, Deterministic = true });

        Assert.Empty(PlanAudit.Check(plan));
        Assert.Equal(9, plan.Made.Length);
        Assert.Empty(plan.Unmade);
        Assert.True(Requests.Level(plan, LevelKind.GiftsMade).IsProven);
        Assert.Equal(plan.Levels.Length, Enum.GetValues<LevelKind>().Length - 1);
    }
}
