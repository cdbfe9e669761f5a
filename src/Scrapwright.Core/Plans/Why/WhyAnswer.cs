using System.Collections.Immutable;

namespace Scrapwright.Core.Plans.Why;

/// <summary>The answer to a question about a plan, worked out by planning once more with the one thing otherwise.</summary>
public sealed record WhyAnswer
{
    /// <summary>What was asked.</summary>
    public required WhyQuestion Question { get; init; }

    /// <summary>True when it can be otherwise; then <see cref="Costs"/> says at what price.</summary>
    public required bool CanBeOtherwise { get; init; }

    /// <summary>True when the answer is proven; false when the time was up before all was tried.</summary>
    public required bool IsProven { get; init; }

    /// <summary>The levels that would differ, in order; none when it would be just as good.</summary>
    public ImmutableArray<LevelCost> Costs { get; init; } = [];

    /// <summary>For a gift that is not made: each gift in whose place it could be made.</summary>
    public ImmutableArray<string> InPlaceOf { get; init; } = [];

    /// <summary>For a gift that even the whole pile does not give: what is missing.</summary>
    public ImmutableArray<Reason> Reasons { get; init; } = [];

    /// <summary>How many glue-ups the part has in the plan.</summary>
    public int GlueUps { get; init; }

    /// <summary>The most layers one of them is resawn into.</summary>
    public int Layers { get; init; }
}
