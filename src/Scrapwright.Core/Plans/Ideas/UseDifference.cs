using System.Collections.Immutable;

namespace Scrapwright.Core.Plans.Ideas;

/// <summary>What it makes of a plan that an offcut is used in one way, against the best plan that leaves it alone.</summary>
/// <param name="Gained">Labels of gifts that are made only with it.</param>
/// <param name="Lost">Labels of gifts that are made only without it.</param>
/// <param name="Looks">Points for looks more; less when negative.</param>
/// <param name="Wood">Rough volume cut out of the pile more; less when negative. [mm³]</param>
/// <param name="ClampLoads">Glue-ups more; fewer when negative.</param>
public sealed record UseDifference(ImmutableArray<string> Gained, ImmutableArray<string> Lost, long Looks, long Wood, long ClampLoads);
