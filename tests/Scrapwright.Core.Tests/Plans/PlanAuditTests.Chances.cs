using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Chances;

namespace Scrapwright.Core.Tests.Plans;

public sealed partial class PlanAuditTests
{
    [Fact]
    public void A_gift_without_its_chance_is_found()
    {
        var plan = ExamplePlans.Squares with { Made = [.. ExamplePlans.Squares.Made.Select(m => m with { ChancePerMille = null })] };

        Assert.Contains(PlanAudit.Check(plan), f => f.Where.EndsWith("chance per mille", StringComparison.Ordinal) && f.Found == "nothing");
    }

    [Fact]
    public void A_gift_that_falls_short_of_what_is_asked_is_found()
    {
        var shop = ExamplePlans.Squares.Request.Shop;
        var wider = shop with { Allowances = shop.Allowances with { EndTrim = shop.Allowances.EndTrim with { Spread = Length.FromInches(3) }, WidthTrim = shop.Allowances.WidthTrim with { Spread = Length.FromInches(1) } } };
        var request = ExamplePlans.Squares.Request with { Shop = wider };
        var plan = PlanChances.Stated(ExamplePlans.Squares with { Request = request, Fingerprint = PlanJson.Fingerprint(request) });
        var wood = PlanScores.Of(plan).WoodUsed;
        plan = plan with { Levels = [.. plan.Levels.Select(l => l.Kind == LevelKind.WoodUsed ? l with { Value = wood, Bound = wood } : l)] };

        // Only the margin is missing: every number of the plan is right.
        Assert.Contains(PlanAudit.Check(plan), f => f.Expected == "at least the 950 asked for");
    }

    [Fact]
    public void The_audit_works_chances_out_in_its_own_way_and_finds_the_same()
    {
        var chances = PlanChances.Of(ExamplePlans.Full, ExamplePlans.Designs);

        Assert.Equal(ExamplePlans.Full.GlueUps.Select(g => g.ChancePerMille), chances.Panels.Select(p => p.Sizes.PerMille));
        Assert.All(chances.Gifts, g => Assert.InRange(g.PerMille, 950, 1000));
    }
}
