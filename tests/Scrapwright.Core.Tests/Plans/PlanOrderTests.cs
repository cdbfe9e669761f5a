using CsCheck;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Core.Tests.Plans;

public sealed class PlanOrderTests
{
    private static readonly Plan Plan = ExamplePlans.Squares;
    private static readonly int[] Places = [0, 1, 2, 3];

    [Fact]
    public void The_strips_turned_round_hold_and_stand_as_a_choice()
    {
        var turned = PlanOrder.With(Plan, "G1", [3, 2, 1, 0]);

        Assert.Empty(PlanAudit.Check(turned));
        Assert.Equal(["M2", "W2", "M1", "W1"], turned.GlueUps[0].Strips.Select(s => s.Piece));
        Assert.Equal(ChosenOrder.Of(turned.GlueUps[0]).Strips, Assert.Single(turned.Request.Choices.Orders).Strips);
        Assert.Equal(Plan.GlueUps[0].LeastContrastHundredths, turned.GlueUps[0].LeastContrastHundredths);
    }

    [Fact]
    public void Other_strips_at_the_edges_are_trimmed_and_the_ledger_says_so()
    {
        var turned = PlanOrder.With(Plan, "G1", [1, 0, 3, 2]);

        Assert.Empty(PlanAudit.Check(turned));
        Assert.NotEqual(Plan.Ledger.Select(r => r.Parts), turned.Ledger.Select(r => r.Parts));
        Assert.Equal(Plan.Ledger.Select(r => r.In), turned.Ledger.Select(r => r.In));
    }

    [Fact]
    public void Of_any_order_the_audit_complains_of_neighbours_alone() =>
        Gen.Shuffle(Places).Sample(
            order =>
            {
                var turned = PlanOrder.With(Plan, "G1", [.. order]);
                var species = turned.GlueUps[0].Strips.Select(s => s.Offcut[0]).ToList();
                var alike = species.Zip(species.Skip(1)).Count(pair => pair.First == pair.Second);
                var findings = PlanAudit.Check(turned);
                return findings.Length == alike && findings.All(f => f.Where.EndsWith("contrast", StringComparison.Ordinal));
            },
            iter: 24, threads: 1);

    [Fact]
    public void Turned_round_twice_it_is_the_same_plan_but_for_the_choice()
    {
        var twice = PlanOrder.With(PlanOrder.With(Plan, "G1", [1, 2, 3, 0]), "G1", [3, 0, 1, 2]);

        Assert.Equal(PlanJson.Write(Plan), PlanJson.Write(twice with { Request = Plan.Request, Fingerprint = Plan.Fingerprint }));
    }

    [Fact]
    public void What_is_no_order_of_the_strips_throws()
    {
        Assert.Throws<ArgumentException>(() => PlanOrder.With(Plan, "G9", [0, 1, 2, 3]));
        Assert.Throws<ArgumentException>(() => PlanOrder.With(Plan, "G1", [0, 1, 2]));
        Assert.Throws<ArgumentException>(() => PlanOrder.With(Plan, "G1", [0, 1, 2, 2]));
    }
}
