using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans.Audit;

namespace Scrapwright.Core.Plans;

/// <summary>The independent check of a plan: re-derives every number from the plan alone. Shares no code with the solver. docs/audit.md lists every check.</summary>
public static class PlanAudit
{
    /// <summary>Everything that does not hold; empty when the plan holds. Does not throw, whatever the plan says.</summary>
    /// <exception cref="ArgumentNullException">There is no plan.</exception>
    public static ImmutableArray<AuditFinding> Check(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Check(plan, request => request.DeriveDesigns());
    }

    /// <summary>The same with another way from gifts to products.</summary>
    internal static ImmutableArray<AuditFinding> Check(Plan plan, Func<PlanRequest, ImmutableArray<GiftDesign>> derive)
    {
        var findings = new Findings();
        findings.Equal("version", plan.Version, 1);
        new PlanShape(findings).Check(plan);
        if (findings.AreNone)
        {
            new ChoiceShape(findings).Check(plan);
        }

        if (!findings.AreNone)
        {
            return findings.ToArray();
        }

        new RequestFacts(findings).Check(plan.Request);
        new PlanSizes(findings).Check(plan);
        if (findings.AreNone)
        {
            findings.Equal("fingerprint of the request", plan.Fingerprint, PlanJson.Fingerprint(plan.Request));
        }

        // With a number out of range or another request nothing that follows would mean anything.
        return findings.AreNone ? CheckWork(plan, derive(plan.Request), findings) : findings.ToArray();
    }

    private static ImmutableArray<AuditFinding> CheckWork(Plan plan, ImmutableArray<GiftDesign> designs, Findings findings)
    {
        var facts = new Facts(plan, designs, findings);
        new FacedCheck(facts, findings).Check();
        new StepCheck(facts, findings).Check();
        var replay = new Replay(facts, findings);
        replay.Run();
        new GiftCheck(facts, findings).Check(replay.Stock);
        new LeftoverCheck(facts, findings).Check(replay.Stock);
        new RodCheck(facts, findings).Check(replay.Stock);
        new ChoiceCheck(facts, findings).Check();
        new LevelCheck(facts, findings).Check();
        replay.Chances.Check();
        return findings.ToArray();
    }
}
