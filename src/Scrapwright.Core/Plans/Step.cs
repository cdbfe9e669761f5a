using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans;

/// <summary>One operation on named pieces at a station, with its numbers.</summary>
public sealed record Step
{
    /// <summary>Place in the working order, from 1 without gaps.</summary>
    public required int Number { get; init; }

    /// <summary>Where it is done.</summary>
    public required Station Station { get; init; }

    /// <summary>What is done.</summary>
    public required Operation Operation { get; init; }

    /// <summary>The glue-up it belongs to; empty for none or several.</summary>
    public string GlueUp { get; init; } = "";

    /// <summary>The gift it belongs to; empty for none or several.</summary>
    public string Gift { get; init; } = "";

    /// <summary>Index in the product's assembly list, from 0; −1 when it is a milling step.</summary>
    public int AssemblyIndex { get; init; } = -1;

    /// <summary>What is done to each piece.</summary>
    public required ImmutableArray<Work> Works { get; init; }

    /// <summary>Minutes with a hand on it: set-up and every piece, from the shop's times.</summary>
    public required int HandsOnMinutes { get; init; }

    /// <summary>Minutes of waiting afterwards.</summary>
    public required int WaitMinutes { get; init; }
}
