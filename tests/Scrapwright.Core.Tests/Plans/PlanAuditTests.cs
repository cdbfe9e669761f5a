using System.Collections.Immutable;
using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Tests.Plans;

public sealed partial class PlanAuditTests
{
    private static ImmutableArray<AuditFinding> Check(Plan plan) => PlanAudit.Check(plan, _ => ExamplePlans.Designs);

    private static string Text(ImmutableArray<AuditFinding> findings) =>
        string.Join("\n", findings.Select(f => $"{f.Where}: found {f.Found}, expected {f.Expected}"));

    [Fact]
    public void A_plan_with_every_operation_holds() => Assert.Equal("", Text(Check(ExamplePlans.Full)));

    [Fact]
    public void A_plan_of_a_built_in_design_holds() => Assert.Equal("", Text(PlanAudit.Check(ExamplePlans.Squares)));

    [Fact]
    public void A_plan_still_holds_when_it_was_written_and_read() =>
        Assert.Equal("", Text(Check(PlanJson.Read(PlanJson.Write(ExamplePlans.Full)))));

    [Fact]
    public void An_empty_plan_of_an_empty_request_holds()
    {
        var request = new PlanRequest();
        var plan = new PlanBench(request, []).Build();

        Assert.Empty(PlanAudit.Check(plan));
    }
}
