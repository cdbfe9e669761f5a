using System.Globalization;
using Google.OrTools.Sat;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning.Search;

/// <summary>Searches a whole problem with the solver, level by level.</summary>
internal sealed class WholeSearch(PlanModel model, PlanLimits limits, CancellationToken cancellationToken)
{
    /// <summary>Deterministic work done so far.</summary>
    internal double Work { get; private set; }

    /// <summary>Starts the next search from a placement.</summary>
    internal void Start(Placement placement) => model.Suggest(placement);

    /// <summary>From now on a level may not get worse.</summary>
    internal void Hold(LevelKind kind, long value) => model.Hold(kind, value);

    /// <summary>Forbids one set of strips for a glue-up whose order could not be found.</summary>
    internal void Forbid(Placement placement, int panel) => model.Forbid(panel, placement.Segments.Where(s => s.Panel == panel));

    /// <summary>The best placement on a level with the bound reached, or null when none was found in time.</summary>
    /// <param name="kind">The level.</param>
    /// <param name="seconds">Longest time, or work.</param>
    /// <param name="known">The bound known so far.</param>
    /// <param name="tell">Told of every improvement.</param>
    internal (Placement Placement, long Bound)? Improve(LevelKind kind, double seconds, long known, Action<LevelKind, long, long, bool> tell)
    {
        model.Aim(kind);
        var solver = new CpSolver { StringParameters = Parameters(kind, seconds) };
        using var watch = new ImprovementWatch((value, bound) => tell(kind, value, Better(kind, bound, known), false));
        using var stop = cancellationToken.Register(solver.StopSearch);
        var status = solver.Solve(model.Model, watch);
        Work += solver.Response?.DeterministicTime ?? 0;
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            return null;
        }

        var reached = PlanModel.IsMaximised(kind)
            ? (long)Math.Floor(solver.BestObjectiveBound + 1e-6)
            : (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6);
        return (model.Read(solver), Better(kind, reached, known));
    }

    private static long Better(LevelKind kind, long one, long other) => PlanModel.IsMaximised(kind) ? Math.Min(one, other) : Math.Max(one, other);

    /// <summary>
    /// For wood and clamp loads the solver's presolve turns "used, then wide enough" into conditional constraints that its linear relaxation leaves out:
    /// the bound on wood stays at about a third of the value. Without presolve and with every constraint in the relaxation it comes within a few per cent.
    /// Gifts and looks are found faster with presolve.
    /// </summary>
    private string Parameters(LevelKind kind, double seconds)
    {
        var workers = limits.Deterministic ? 1 : limits.Workers;
        var limit = limits.Deterministic ? "max_deterministic_time" : "max_time_in_seconds";
        var relaxation = PlanModel.IsMaximised(kind) ? "" : "cp_model_presolve:false linearization_level:2 ";
        return string.Create(CultureInfo.InvariantCulture, $"{relaxation}random_seed:{limits.Seed} num_workers:{workers} {limit}:{seconds:0.###}");
    }
}
