using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Problems;

/// <summary>One strip's share of an offcut's width.</summary>
/// <param name="RoughWidth">Its share before milling.</param>
/// <param name="NetWidth">Its width with both edges jointed.</param>
/// <param name="IsForSolidParts">True when it is ripped to the width of solid parts and serves nothing else.</param>
internal sealed record PatternLane(Length RoughWidth, Length NetWidth, bool IsForSolidParts = false);
