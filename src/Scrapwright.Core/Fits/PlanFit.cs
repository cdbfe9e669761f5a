using Scrapwright.Core.Designs;

namespace Scrapwright.Core.Fits;

/// <summary>One fit of a gift that a plan makes, through the year.</summary>
/// <param name="Gift">Label of the gift whose opening it is.</param>
/// <param name="Fit">The fit as its design declares it.</param>
/// <param name="Season">How it stands in every month where the gift will live.</param>
public sealed record PlanFit(string Gift, Fit Fit, SeasonFit Season);
