using Scrapwright.Core.Plans;
using Scrapwright.Planning.Building;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Ideas;

/// <summary>Whether the whole pile gives none of some gifts, not even one of them.</summary>
internal static class NotEvenOne
{
    /// <summary>True when that is proven; false when one can be made, or when the time was up.</summary>
    internal static bool IsProven(PlanRequest request, PlanLimits limits, CancellationToken cancellationToken)
    {
        var problem = ProblemMaker.Make(request);
        var options = new SegmentOptions(problem);
        var model = new PlanModel(problem, options, Scope.All(problem));
        model.RequireOneMade();
        return new OtherwiseSearch(limits, cancellationToken).IsPossible(model, p => PlanBuilder.FindUnorderable(problem, p)) is false;
    }
}
