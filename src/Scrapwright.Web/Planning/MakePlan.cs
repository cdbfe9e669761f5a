using Scrapwright.Core.Plans;
using Scrapwright.Planning;

namespace Scrapwright.Web.Planning;

/// <summary>Makes a plan, near to a former one if there is one; <see cref="Planner.PlanAsync(PlanRequest, PlanLimits, Plan, IProgress{PlanProgress}, CancellationToken)"/> outside of tests. May work on the calling thread.</summary>
public delegate Task<PlanOutcome> MakePlan(PlanRequest request, PlanLimits limits, Plan? former, IProgress<PlanProgress>? progress, CancellationToken cancellationToken);
