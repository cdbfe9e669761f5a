using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>What the maker has noted in a workshop folder and no plan depends on.</summary>
public sealed record WorkshopNotes
{
    /// <summary>How long work took.</summary>
    public ImmutableArray<TimeReading> Times { get; init; } = [];

    /// <summary>What can be bought.</summary>
    public ImmutableArray<Price> Prices { get; init; } = [];

    /// <summary>The maker's own jigs.</summary>
    public ImmutableArray<Jig> Jigs { get; init; } = [];
}
