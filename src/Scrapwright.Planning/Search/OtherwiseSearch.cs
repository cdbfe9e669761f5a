using System.Diagnostics;
using System.Globalization;
using Google.OrTools.Sat;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning.Search;

/// <summary>The best placement of a small model with something asked for otherwise, level by level, within one time limit for all that is asked.</summary>
internal sealed class OtherwiseSearch(PlanLimits limits, CancellationToken cancellationToken)
{
    private readonly Stopwatch clock = Stopwatch.StartNew();
    private double work;

    /// <summary>False once a solve ended without a proof.</summary>
    internal bool IsProven { get; private set; } = true;

    /// <summary>True while there is time.</summary>
    internal bool HasTime => SecondsLeft > 0.05 && !cancellationToken.IsCancellationRequested;

    private double SecondsLeft => limits.Seconds - (limits.Deterministic ? work : clock.Elapsed.TotalSeconds);

    /// <summary>Whether there is a placement at all; null when that could not be found out in time.</summary>
    /// <param name="model">The model.</param>
    /// <param name="accept">Takes a placement and gives the glue-up whose strips find no order, or null when all do.</param>
    internal bool? IsPossible(PlanModel model, Func<Placement, int?> accept) => Solve(model, accept, 1) switch
    {
        (CpSolverStatus.Infeasible, _) => false,
        (_, null) => Unproven(),
        _ => true,
    };

    /// <summary>The best placement on the levels given, one after the other; null when there is none, or none was found in time.</summary>
    /// <param name="model">The model.</param>
    /// <param name="levels">The levels in order.</param>
    /// <param name="accept">Takes a placement and gives the glue-up whose strips find no order, or null when all do.</param>
    internal Placement? Best(PlanModel model, IReadOnlyList<LevelKind> levels, Func<Placement, int?> accept)
    {
        Placement? best = null;
        for (var i = 0; i < levels.Count && HasTime; i++)
        {
            model.Aim(levels[i]);
            var (status, found) = Solve(model, accept, levels.Count - i);
            IsProven &= status is CpSolverStatus.Optimal || (best is null && status is CpSolverStatus.Infeasible);
            if (found is null)
            {
                IsProven &= status is CpSolverStatus.Infeasible;
                return best;
            }

            best = found.Value.Placement;
            model.Hold(levels[i], found.Value.Reached);
            model.Suggest(best);
        }

        IsProven &= HasTime || best is not null;
        return best;
    }

    private bool? Unproven()
    {
        IsProven = false;
        return null;
    }

    private (CpSolverStatus Status, (Placement Placement, long Reached)? Found) Solve(PlanModel model, Func<Placement, int?> accept, int levelsLeft)
    {
        while (HasTime)
        {
            var solver = new CpSolver { StringParameters = Parameters(SecondsLeft / levelsLeft) };
            using var stop = cancellationToken.Register(solver.StopSearch);
            var status = solver.Solve(model.Model);
            work += solver.Response?.DeterministicTime ?? 0;
            if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            {
                return (status, null);
            }

            var placement = model.Read(solver);
            if (accept(placement) is not { } panel)
            {
                return (status, (placement, (long)Math.Round(solver.ObjectiveValue)));
            }

            model.Forbid(panel, placement.Segments.Where(s => s.Panel == panel));
        }

        return (CpSolverStatus.Unknown, null);
    }

    private string Parameters(double seconds)
    {
        var workers = limits.Deterministic ? 1 : limits.Workers;
        var limit = limits.Deterministic ? "max_deterministic_time" : "max_time_in_seconds";
        return string.Create(CultureInfo.InvariantCulture, $"random_seed:{limits.Seed} num_workers:{workers} {limit}:{Math.Max(0.05, seconds):0.###}");
    }
}
