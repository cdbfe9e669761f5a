using Google.OrTools.Sat;

namespace Scrapwright.Planning.Search;

/// <summary>Tells of every better solution.</summary>
internal sealed class ImprovementWatch(Action<long, long> tell) : CpSolverSolutionCallback
{
    /// <inheritdoc/>
    public override void OnSolutionCallback() =>
        tell((long)Math.Round(ObjectiveValue()), (long)Math.Round(BestObjectiveBound()));
}
