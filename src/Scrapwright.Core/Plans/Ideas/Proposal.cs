using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans.Ideas;

/// <summary>Gifts that a pile gives: a plan that passed the audit makes all of them. What it uses up is counted beside what the gifts on the list use.</summary>
public sealed record Proposal
{
    /// <summary>What it is.</summary>
    public required string Title { get; init; }

    /// <summary>True for gifts of several kinds, false for as many as there can be of one.</summary>
    public bool IsMixture { get; init; }

    /// <summary>How many gifts there are.</summary>
    public int Count => Gifts.Length;

    /// <summary>No plan makes more of them than this; null when that is not known.</summary>
    public int? AtMost { get; init; }

    /// <summary>True when no plan makes more of them.</summary>
    public bool IsProven => AtMost == Count;

    /// <summary>The gifts, ready for the list: their labels are free, and they come after all gifts on it.</summary>
    public required ImmutableArray<Gift> Gifts { get; init; }

    /// <summary>Wood that ends in them; parts count as the box they fill.</summary>
    public Volume InGifts { get; init; }

    /// <summary>Rough volume cut out of the pile for them. [mm³], each cut rounded up; what is on the list may be planned more thriftily beside them</summary>
    public long WoodUsed { get; init; }

    /// <summary>Glue-ups they take, each a load of clamps; below zero when those on the list are planned with fewer beside them.</summary>
    public int ClampLoads { get; init; }

    /// <summary>Labels of the single offcuts of which nothing goes back to the pile.</summary>
    public ImmutableArray<string> UsedUp { get; init; } = [];
}
