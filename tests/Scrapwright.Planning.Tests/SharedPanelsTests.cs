using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Planning.Tests;

/// <summary>One glue-up for two gifts.</summary>
public sealed class SharedPanelsTests
{
    private static readonly PlanRequest TwoPairs = Requests.FourSquares with
    {
        Gifts = [Requests.Squares("bench", ("count", "2")), Requests.Squares("shelf", ("count", "2"))],
    };

    [Fact]
    public async Task Two_gifts_of_one_size_share_a_load_of_clamps()
    {
        var plan = await Requests.PlanOf(TwoPairs);

        Assert.Empty(PlanAudit.Check(plan));
        var glueUp = Assert.Single(plan.GlueUps);
        Assert.Equal([new GlueUpShare("shelf", "square", 2)], glueUp.Also);
        Assert.Equal(["bench", "shelf"], plan.Made.Select(m => m.Gift));
        Assert.True(Requests.Level(plan, LevelKind.ClampLoads).IsProven);
    }

    [Fact]
    public async Task Gifts_that_would_look_alike_to_people_who_compare_do_not_share()
    {
        var circle = TwoPairs with { Gifts = [.. TwoPairs.Gifts.Select(g => g with { Circle = "stalls" })] };
        var unlike = TwoPairs with { Gifts = [TwoPairs.Gifts[0], Requests.Squares("shelf", ("count", "2"), ("pattern", "mirrored"))] };

        foreach (var request in new[] { circle, unlike })
        {
            var plan = await Requests.PlanOf(request);

            Assert.Empty(PlanAudit.Check(plan));
            Assert.Equal(2, plan.GlueUps.Length);
            Assert.All(plan.GlueUps, g => Assert.Empty(g.Also));
        }
    }

    [Fact]
    public async Task A_share_that_is_told_wrong_is_found()
    {
        var plan = await Requests.PlanOf(TwoPairs);
        var glueUp = plan.GlueUps[0];

        foreach (var also in new GlueUpShare[][]
        {
            [], [new("shelf", "square", 1)], [new("shelf", "square", 4)], [new("shelf", "plank", 2)], [new("bench", "square", 2)],
            [new("shelf", "square", 2), new("shelf", "square", 2)], [new("nobody", "square", 2)],
        })
        {
            Assert.NotEmpty(PlanAudit.Check(plan with { GlueUps = [glueUp with { Also = [.. also] }] }));
        }
    }

    [Fact]
    public async Task What_two_gifts_share_stays_when_planned_again_and_when_it_is_glued()
    {
        var plan = await Requests.PlanOf(TwoPairs);
        var again = Assert.IsType<PlanOutcome.Planned>(await Planner.PlanAsync(TwoPairs, Requests.Quick, plan)).Plan;
        Assert.Empty(PlanChanges.Between(plan, again));

        var glued = TwoPairs with { Choices = DoneMarks.Glue(plan, plan.GlueUps[0].Id) };
        var after = Assert.IsType<PlanOutcome.Planned>(await Planner.PlanAsync(glued, Requests.Quick, plan)).Plan;
        Assert.Empty(PlanAudit.Check(after));
        Assert.Equal(plan.GlueUps[0].Also, after.GlueUps[0].Also);
        Assert.Equal(2, after.Made.Length);
    }

    [Fact]
    public async Task What_was_glued_for_a_gift_that_is_off_the_list_is_left_over()
    {
        var plan = await Requests.PlanOf(TwoPairs);
        var glued = TwoPairs with { Gifts = [TwoPairs.Gifts[0]], Choices = DoneMarks.Glue(plan, plan.GlueUps[0].Id) };

        var after = await Requests.PlanOf(glued);

        Assert.Empty(PlanAudit.Check(after));
        Assert.Equal(["bench"], after.Made.Select(m => m.Gift));
        Assert.Single(after.GlueUps);
    }
}
