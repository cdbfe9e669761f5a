using System.Collections.Immutable;

namespace Scrapwright.Core.Plans;

/// <summary>A gift that the plan makes.</summary>
/// <param name="Gift">Its label.</param>
/// <param name="Parts">Every copy of every part, and the piece it is.</param>
public sealed record MadeGift(string Gift, ImmutableArray<MadePart> Parts);
