using System.Collections.Immutable;

namespace Scrapwright.Core.Designs;

/// <summary>Where two parts meet, with the dimensions of the joint.</summary>
/// <param name="Kind">Trade name: rod in through hole, edge half-lap, mitre with keys.</param>
/// <param name="Parts">The parts that meet, by mark or key.</param>
/// <param name="Count">How many such joints.</param>
/// <param name="Dimensions">Named sizes: what to set and measure.</param>
public sealed record Joint(string Kind, ImmutableArray<string> Parts, int Count, ImmutableArray<JointSize> Dimensions)
{
    /// <summary>The lines along which the parts are glued; empty where nothing is glued.</summary>
    public ImmutableArray<GluedLine> Glued { get; init; } = [];
}
