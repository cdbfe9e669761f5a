using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar.Worth;

/// <summary>A gift, or one kind of its parts, made or bought.</summary>
public sealed record ThingWorth
{
    /// <summary>Label of the gift.</summary>
    public required string Gift { get; init; }

    /// <summary>The part; null for the whole gift.</summary>
    public Part? Part { get; init; }

    /// <summary>How many. [1], at least 1</summary>
    public required int Count { get; init; }

    /// <summary>Hands-on minutes that are left to make it: those of its own tasks, and of shared ones its share by pieces. [min], rounded to the nearest</summary>
    public required int Minutes { get; init; }

    /// <summary>Setting up that nothing else needs. [min]</summary>
    public required int SetUpMinutes { get; init; }

    /// <summary>What that time is worth, rounded to the hundredth; null without a worth of the hour.</summary>
    public decimal? MakeCost { get; init; }

    /// <summary>What one costs to buy; null when there is no price.</summary>
    public Price? Price { get; init; }

    /// <summary>What all of them cost to buy; null when there is no price.</summary>
    public decimal? BuyCost => Price?.Amount * Count;

    /// <summary>What the figures say.</summary>
    public required WorthVerdict Verdict { get; init; }

    /// <summary>What bought ones have to fit: the parts at finished size.</summary>
    public required ImmutableArray<Part> Sizes { get; init; }
}
