using System.Collections.Immutable;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Core.Plans.Ideas;

/// <summary>One way in which an offcut serves, with the plan that uses it so.</summary>
public sealed record OffcutUse
{
    /// <summary>Label of the gift.</summary>
    public required string Gift { get; init; }

    /// <summary>What the gift is.</summary>
    public required string Title { get; init; }

    /// <summary>What the part is called that gets wood of the offcut.</summary>
    public required string Part { get; init; }

    /// <summary>True when the part is solid, false when the offcut gives strips for a glue-up.</summary>
    public bool IsSolid { get; init; }

    /// <summary>The gift, ready for the list; null when it is on it.</summary>
    public Gift? New { get; init; }

    /// <summary>Against the best plan that leaves the offcut alone.</summary>
    public required UseDifference Difference { get; init; }

    /// <summary>Share of the offcut that ends in gifts. [thousandths], rounded down</summary>
    public int ShareInGiftsPerMille { get; init; }

    /// <summary>True when both plans are proven best; false when the time was up before.</summary>
    public bool IsProven { get; init; }
}
