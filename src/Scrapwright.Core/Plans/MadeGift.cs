using System.Collections.Immutable;

namespace Scrapwright.Core.Plans;

/// <summary>A gift that the plan makes.</summary>
/// <param name="Gift">Its label.</param>
/// <param name="Parts">Every copy of every part, and the piece it is.</param>
public sealed record MadeGift(string Gift, ImmutableArray<MadePart> Parts)
{
    /// <summary>Chance that all its panels and solid parts hold their sizes, in thousandths, rounded down; null in a plan of a version that did not say.</summary>
    public int? ChancePerMille { get; init; }
}
