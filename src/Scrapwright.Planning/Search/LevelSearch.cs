using System.Diagnostics;
using System.Globalization;
using Google.OrTools.Sat;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning.Search;

/// <summary>Improves one level after the other, each without costing an earlier one.</summary>
internal sealed class LevelSearch(PlanModel model, PlanLimits limits, Placement first, TimeSpan spent, CancellationToken cancellationToken)
{
    /// <summary>Share of the time still left that each level may take, in the order of the levels.</summary>
    private static readonly double[] Shares = [0.4, 0.3, 0.85, 1.0];

    private const double LeastSeconds = 0.3;

    private readonly Stopwatch clock = Stopwatch.StartNew();
    private double workDone;

    /// <summary>The best placement so far.</summary>
    internal Placement Best { get; private set; } = first;

    /// <summary>Runs through the levels.</summary>
    /// <param name="bounds">Bounds known so far by level; made better here.</param>
    /// <param name="accept">Takes a placement and gives the glue-up whose strips find no order, or null when all do.</param>
    /// <param name="tell">Told of level, value, bound, and whether the level is done with.</param>
    internal void Run(Dictionary<LevelKind, long> bounds, Func<Placement, int?> accept, Action<LevelKind, long, long, bool> tell)
    {
        for (var i = 0; i < PlanModel.LevelOrder.Length && !cancellationToken.IsCancellationRequested; i++)
        {
            var kind = PlanModel.LevelOrder[i];
            if (ValueOf(kind) != bounds[kind] && SecondsLeft() > LeastSeconds)
            {
                Improve(kind, SecondsLeft() * Shares[i], bounds, accept, tell);
            }

            tell(kind, ValueOf(kind), bounds[kind], true);
            model.Hold(kind, ValueOf(kind));
            if (Best.Values[0].Value == 0)
            {
                break;
            }
        }
    }

    private long ValueOf(LevelKind kind) => Best.Values.First(v => v.Kind == kind).Value;

    private double SecondsLeft() => limits.Seconds - (limits.Deterministic ? workDone : (spent + clock.Elapsed).TotalSeconds);

    private void Improve(
        LevelKind kind, double seconds, Dictionary<LevelKind, long> bounds, Func<Placement, int?> accept, Action<LevelKind, long, long, bool> tell)
    {
        var end = SecondsLeft() - seconds;
        model.Aim(kind);
        do
        {
            var solver = new CpSolver { StringParameters = Parameters(kind, Math.Max(LeastSeconds, SecondsLeft() - end)) };
            using var watch = new ImprovementWatch((value, bound) => tell(kind, value, bound, false));
            using var stop = cancellationToken.Register(solver.StopSearch);
            var status = solver.Solve(model.Model, watch);
            workDone += solver.Response?.DeterministicTime ?? 0;
            if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            {
                return;
            }

            var bound = BoundOf(kind, solver, bounds[kind]);
            var placement = model.Read(solver);
            if (accept(placement) is not { } panel)
            {
                Best = placement;
                model.Suggest(placement);
                bounds[kind] = bound;
                return;
            }

            model.Forbid(panel, placement.Segments.Where(s => s.Panel == panel));
        }
        while (SecondsLeft() > end + LeastSeconds && !cancellationToken.IsCancellationRequested);
    }

    private static long BoundOf(LevelKind kind, CpSolver solver, long known) => PlanModel.IsMaximised(kind)
        ? Math.Min(known, (long)Math.Floor(solver.BestObjectiveBound + 1e-6))
        : Math.Max(known, (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6));

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
