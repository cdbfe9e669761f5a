using System.Collections.Immutable;

namespace Scrapwright.Core.Plans;

/// <summary>A gift that the plan cannot make, with what is missing.</summary>
/// <param name="Gift">Its label.</param>
/// <param name="Reasons">Why; never empty.</param>
public sealed record UnmadeGift(string Gift, ImmutableArray<Reason> Reasons);
