using System.Collections.Immutable;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Ideas;

/// <summary>One thing to buy, and which gifts a plan makes with it that none was found for without it. Either a board or clamps.</summary>
public sealed record Purchase
{
    /// <summary>The board; null for clamps.</summary>
    public Offcut? Board { get; init; }

    /// <summary>Clamps of one kind, as many as are bought; null for a board.</summary>
    public ClampKind? Clamps { get; init; }

    /// <summary>What it makes possible: labels of gifts on the list, or what the gifts are when there is no list.</summary>
    public ImmutableArray<string> Unlocks { get; init; } = [];

    /// <summary>Their worth by priority, as the plan's first level counts it.</summary>
    public long Worth { get; init; }

    /// <summary>True when it is proven that no plan makes gifts of more worth without it; false when more time might find one.</summary>
    public bool IsNeeded { get; init; }
}
