using System.Text.Json.Nodes;
using CsCheck;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Tests.Plans;
using Scrapwright.Files;

namespace Scrapwright.Planning.Tests;

/// <summary>The audit on a plan that the planner really made.</summary>
public sealed class PlannedPlanAuditTests
{
    // Small steps are the hard ones; the far ends are there for overflow.
    private static readonly Gen<long> Amount = Gen.OneOf(
        Gen.Const(1L), Gen.Const(-1L), Gen.Long[-1000, 1000], Gen.Long).Where(a => a != 0);

    [Fact]
    public async Task Any_number_changed_in_the_plan_of_the_example_workshop_is_found()
    {
        var outcome = await Planner.PlanAsync(ExampleWorkshop.Request, new PlanLimits { Seconds = 3 });
        var plan = Assert.IsType<PlanOutcome.Planned>(outcome).Plan;
        Assert.Empty(PlanAudit.Check(plan));
        var text = PlanJson.Write(plan);
        var root = JsonNode.Parse(text)!;

        // The request is kept by its fingerprint, which the tests of the audit change too.
        var paths = PlanMutation.Numbers(root).Where(n => !n.GetPath().StartsWith("$.request", StringComparison.Ordinal) && !PlanMutation.IsBound(n)).ToArray();

        Gen.Select(Gen.Int[0, paths.Length - 1], Amount).Sample(
            (which, by) =>
            {
                var changed = PlanMutation.Changed(paths[which], by);
                paths[which].ReplaceWith(changed);
                var found = PlanMutation.Findings(root, p => PlanAudit.Check(p).Length);
                changed.ReplaceWith(paths[which]);
                return found > 0;
            },
            iter: 80, threads: 1);
    }
}
