using Scrapwright.Core.Plans;

namespace Scrapwright.Planning;

/// <summary>Makes plans. The only door to the solver.</summary>
public sealed class Planner
{
    /// <summary>Searches for the best plan within the limits.</summary>
    /// <param name="request">The facts.</param>
    /// <param name="limits">When to stop.</param>
    /// <param name="progress">Told of every improvement; may be null.</param>
    /// <param name="cancellationToken">Ends the search; the best plan so far is the outcome, or cancelled when there is none.</param>
    public Task<PlanOutcome> PlanAsync(PlanRequest request, PlanLimits limits, IProgress<PlanProgress>? progress = null, CancellationToken cancellationToken = default) =>
        throw new NotSupportedException($"{request}{limits}{progress}{cancellationToken}{this}");
}
