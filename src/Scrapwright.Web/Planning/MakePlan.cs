using Scrapwright.Core.Plans;
using Scrapwright.Planning;

namespace Scrapwright.Web.Planning;

/// <summary>Makes a plan; <see cref="Planner.PlanAsync"/> outside of tests. May work on the calling thread.</summary>
public delegate Task<PlanOutcome> MakePlan(PlanRequest request, PlanLimits limits, IProgress<PlanProgress>? progress, CancellationToken cancellationToken);
