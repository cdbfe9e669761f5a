using System.Collections.Immutable;

namespace Scrapwright.Core.Plans;

/// <summary>What came of planning.</summary>
public abstract record PlanOutcome
{
    private PlanOutcome()
    {
    }

    /// <summary>A plan that passed the audit; it makes all gifts or the best subset.</summary>
    /// <param name="Plan">The plan.</param>
    public sealed record Planned(Plan Plan) : PlanOutcome;

    /// <summary>No gift can be made.</summary>
    /// <param name="Unmade">Every gift with what is missing.</param>
    public sealed record Impossible(ImmutableArray<UnmadeGift> Unmade) : PlanOutcome;

    /// <summary>Cancelled before there was a plan.</summary>
    public sealed record Cancelled : PlanOutcome;
}
