using System.Collections.Immutable;

namespace Scrapwright.Core.Plans;

/// <summary>The independent check of a plan: re-derives every number from the plan alone. Shares no code with the solver.</summary>
public static class PlanAudit
{
    /// <summary>Everything that does not hold; empty when the plan holds.</summary>
    public static ImmutableArray<AuditFinding> Check(Plan plan) => throw new NotSupportedException(plan.Fingerprint);
}
