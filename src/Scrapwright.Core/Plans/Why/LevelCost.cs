namespace Scrapwright.Core.Plans.Why;

/// <summary>What a level is in the plan, and what it would be otherwise.</summary>
/// <param name="Kind">The level.</param>
/// <param name="Now">Its value in the plan.</param>
/// <param name="Otherwise">The best value that was found otherwise.</param>
public sealed record LevelCost(LevelKind Kind, long Now, long Otherwise);
