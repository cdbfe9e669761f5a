using System.Collections.Immutable;

namespace Scrapwright.Core.Shops;

/// <summary>The grits on hand and how far apart two of them may stand.</summary>
public sealed record Abrasives
{
    /// <summary>The grits on hand: <c>P120</c> is FEPA, <c>120</c> is CAMI. Any order.</summary>
    public ImmutableArray<string> Grits { get; init; } = ["P80", "P120", "P150", "P180", "P220", "P320"];

    /// <summary>Largest ratio of the mean particle sizes of two grits used one after the other. [1], above 1 to 4. Common practice: 1.5 to 2, no source.</summary>
    public double LargestStep { get; init; } = 1.8;

    /// <summary>Area one disc or sheet of the kind in use sands before it is worn, at one grit. [cm²]; estimate, for a 125 mm disc on hardwood.</summary>
    public int WearsAfterCm2 { get; init; } = 5000;
}
