using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar.Worth;

/// <summary>Making weighed against buying, for the work of a plan that is left. Figures, no decree.</summary>
public sealed record WorthAnswer
{
    /// <summary>What an hour is worth; null when nobody said.</summary>
    public HourWorth? HourWorth { get; init; }

    /// <summary>Every jig that would save something, the one that saves most first.</summary>
    public required ImmutableArray<JigWorth> Jigs { get; init; }

    /// <summary>Every gift with work left, in the plan's order, and below it those of its parts that have a price.</summary>
    public required ImmutableArray<ThingWorth> Things { get; init; }

    /// <summary>What of the shopping list has a price.</summary>
    public required ImmutableArray<ItemWorth> Items { get; init; }

    /// <summary>Prices of what this plan neither makes nor needs: maybe a name is misspelt.</summary>
    public required ImmutableArray<Price> Unmatched { get; init; }

    /// <summary>The answer to a request.</summary>
    /// <param name="request">The facts.</param>
    public static WorthAnswer Of(WorthRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return new WorthMaker(request).Make();
    }
}
