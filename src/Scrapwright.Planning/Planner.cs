using System.Collections.Immutable;
using System.Diagnostics;
using Scrapwright.Core.Plans;
using Scrapwright.Planning.Building;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning;

/// <summary>Makes plans. The only door to the solver.</summary>
public static class Planner
{
    /// <summary>Searches for the best plan within the limits. The search runs on a thread of its own.</summary>
    /// <param name="request">The facts. Labels must be unique.</param>
    /// <param name="limits">When to stop.</param>
    /// <param name="progress">Told of every improvement; may be null.</param>
    /// <param name="cancellationToken">Ends the search; the best plan so far is the outcome, or cancelled when there is none.</param>
    /// <exception cref="InvalidOperationException">The audit rejected the plan: a fault of this program, never shown as a plan.</exception>
    public static Task<PlanOutcome> PlanAsync(PlanRequest request, PlanLimits limits, IProgress<PlanProgress>? progress = null, CancellationToken cancellationToken = default) =>
        PlanAsync(request, limits, null, progress, cancellationToken);

    /// <summary>Searches for the best plan, beginning with what still holds of the plan before; of plans as good as each other it takes the one nearest to that.</summary>
    /// <param name="request">The facts. Labels must be unique.</param>
    /// <param name="limits">When to stop.</param>
    /// <param name="former">The plan before, which holds for the request it was made from; null when there is none.</param>
    /// <param name="progress">Told of every improvement; may be null.</param>
    /// <param name="cancellationToken">Ends the search; the best plan so far is the outcome, or cancelled when there is none.</param>
    /// <exception cref="InvalidOperationException">The audit rejected the plan: a fault of this program, never shown as a plan.</exception>
    public static Task<PlanOutcome> PlanAsync(
        PlanRequest request, PlanLimits limits, Plan? former, IProgress<PlanProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(limits);
        return Task.Factory.StartNew(
            () => Plan(request, limits, former, progress, cancellationToken), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
    }

    private static PlanOutcome Plan(PlanRequest request, PlanLimits limits, Plan? former, IProgress<PlanProgress>? progress, CancellationToken cancellationToken)
    {
        var clock = Stopwatch.StartNew();
        var problem = ProblemMaker.Make(request, former);
        var options = new SegmentOptions(problem);
        var first = FormerPlacement.Start(problem, options);
        var bounds = problem.Levels.ToDictionary(k => k, k => PlacementValues.TrivialBound(problem, k));
        var best = Audited(PlanBuilder.Build(problem, first, bounds));
        progress?.Report(new PlanProgress("First plan", clock.Elapsed, best.Levels, best));
        if (problem.Gifts.IsEmpty || cancellationToken.IsCancellationRequested)
        {
            return Outcome(best, cancellationToken);
        }

        var search = new LevelSearch(problem, options, limits, first, clock.Elapsed, cancellationToken);
        search.Run(
            bounds,
            placement => PlanBuilder.FindUnorderable(problem, placement),
            (kind, value, bound, isDone) =>
            {
                Plan? fresh = null;
                if (isDone)
                {
                    fresh = best = Audited(PlanBuilder.Build(problem, search.Best, bounds));
                }

                progress?.Report(new PlanProgress(Phase(kind), clock.Elapsed, Levels(best, kind, value, bound), fresh));
            });
        return Outcome(best, cancellationToken);
    }

    private static PlanOutcome Outcome(Plan best, CancellationToken cancellationToken)
    {
        if (!best.Made.IsEmpty)
        {
            return new PlanOutcome.Planned(best);
        }

        return cancellationToken.IsCancellationRequested ? new PlanOutcome.Cancelled() : new PlanOutcome.Impossible(best.Unmade);
    }

    private static ImmutableArray<Level> Levels(Plan best, LevelKind kind, long value, long bound) =>
        [.. best.Levels.Select(l => l.Kind == kind ? l with { Value = value, Bound = bound } : l)];

    private static string Phase(LevelKind kind) => kind switch
    {
        LevelKind.GiftsMade => "Gifts made",
        LevelKind.Looks => "Looks",
        LevelKind.WoodUsed => "Wood used",
        LevelKind.ClampLoads => "Clamp loads",
        _ => "Strips as before",
    };

    /// <summary>The plan itself once the audit has found nothing.</summary>
    /// <exception cref="InvalidOperationException">The audit rejected it.</exception>
    internal static Plan Audited(Plan plan)
    {
        var findings = PlanAudit.Check(plan);
        return findings.IsEmpty
            ? plan
            : throw new InvalidOperationException(
                $"The audit rejected the plan: {string.Join("; ", findings.Take(5).Select(f => $"{f.Where}: found {f.Found}, expected {f.Expected}"))}");
    }
}
