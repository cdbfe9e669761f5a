namespace Scrapwright.Core.Plans;

/// <summary>One level of the objective: how good the plan is and how good any plan could be. Levels stand in order; a later one never costs an earlier one.</summary>
public sealed record Level
{
    /// <summary>Which level.</summary>
    public required LevelKind Kind { get; init; }

    /// <summary>Value of this plan, re-derived by the audit.</summary>
    public required long Value { get; init; }

    /// <summary>Proven bound given the levels before it: no plan has more (levels to maximise) or less (to minimise).</summary>
    public required long Bound { get; init; }

    /// <summary>True when larger is better.</summary>
    public bool Maximise => Kind is LevelKind.GiftsMade or LevelKind.Looks or LevelKind.StripsAsBefore;

    /// <summary>True when value and bound meet.</summary>
    public bool IsProven => Value == Bound;

    /// <summary>Distance to the bound in thousandths of the larger of the two, rounded up; 0 when proven.</summary>
    public long GapPerMille =>
        Value == Bound ? 0 : (long)Math.Ceiling(1000m * Math.Abs((decimal)Value - Bound) / Math.Max(1, Math.Max(Math.Abs((decimal)Value), Math.Abs((decimal)Bound))));
}
