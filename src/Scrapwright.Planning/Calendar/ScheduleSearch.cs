using System.Diagnostics;
using System.Globalization;
using Google.OrTools.Sat;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Building;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Calendar;

/// <summary>The search for a calendar: orders first, then level by level with the solver, whole or by stretches of time.</summary>
internal sealed class ScheduleSearch
{
    // Beyond so many places (task and window) one model is slower than many small ones. Measured on the invented shop of the benchmarks.
    private const int MostPlaces = 8000;

    // Few tasks are soon proven by the solver; with many of them orders are better for long. Seconds are for 120 tasks. Measured on published instances.
    private const double MostShareOfOrders = 0.4;
    private const double SecondsOfOrders = 8;

    // Evenings are filled for a part of the time of orders, or of what is left after these. Our own choice, by measurement.
    private const double ShareOfEvenings = 0.7;
    private const double ShareOfShortEvenings = 0.15;
    private const double ShareBeforeSolver = 0.4;

    // Evenings, orders and stretches take turns. Our own choice, by measurement.
    private const double MostSecondsOfEvenings = 4;
    private const double MostSecondsOfOrders = 1;

    // Where the limit is in work, so many passes. Our own choice.
    private const int PassesOfEvenings = 10;

    // A turn counts for something even where the solver says it did nothing, so that a limit in work ends.
    private const double LeastWork = 0.1;

    private readonly ScheduleFacts facts;
    private readonly StartRanges ranges;
    private readonly PlanLimits limits;
    private readonly IProgress<ScheduleProgress>? progress;
    private readonly CancellationToken cancellationToken;
    private readonly Stopwatch clock = Stopwatch.StartNew();
    private readonly EveningSearch evenings;
    private double work;

    /// <summary>A search that has not begun.</summary>
    internal ScheduleSearch(ScheduleFacts facts, StartRanges ranges, PlanLimits limits, IProgress<ScheduleProgress>? progress, CancellationToken cancellationToken)
    {
        (this.facts, this.ranges, this.limits, this.progress, this.cancellationToken) = (facts, ranges, limits, progress, cancellationToken);
        Bounds = LevelBounds.Of(facts, ranges);
        evenings = new EveningSearch(facts, ranges, limits.Seed, Workers);
    }

    /// <summary>The best placement so far, or null.</summary>
    internal PlacedTasks? Best { get; private set; }

    /// <summary>By level.</summary>
    internal long[] Bounds { get; }

    /// <summary>True when the solver has shown that there is no schedule.</summary>
    internal bool IsProvenImpossible { get; private set; }

    private double Left => limits.Seconds - (limits.Deterministic ? work : clock.Elapsed.TotalSeconds);

    private int Workers => limits.Deterministic ? 1 : Math.Max(1, limits.Workers);

    // With settings one search that remembers comes farther than two at half its speed. Measured on the example workshop.
    private int WorkersOfOrders => facts.SetUps.Length == 0 ? Workers : 1;

    private bool IsOver => Left <= 0 || cancellationToken.IsCancellationRequested;

    /// <summary>Searches until all levels are proven or the limits are reached.</summary>
    internal void Run()
    {
        var placing = new ListPlacing(facts, ranges);
        Take(Keeping.Best(facts, ranges, placing), "As before");
        Take(ScheduleBuilder.Best(facts, ranges, placing), "First calendar");
        if (Best is null) FindAny();
        if (Best is null) return;
        if (!IsProven) SearchOrders();
        for (var level = 0; level < facts.Levels.Length && !IsOver; level++)
        {
            if (Best.Values[level] > Bounds[level]) LevelBounds.Raise(facts, ranges, Best.Values, Bounds);
            if (Best.Values[level] > Bounds[level]) Improve(level);
        }

        LevelBounds.Raise(facts, ranges, Best.Values, Bounds);
    }

    private bool IsLate => facts.Levels.Where((level, i) => level.Kind == ScheduleLevelKind.Lateness && Best!.Values[i] > Bounds[i]).Any();

    private bool IsProven => Best!.Values.AsSpan().SequenceEqual(Bounds);

    /// <summary>How long the search may take for a level. [s], or work</summary>
    private double Share(int level) => level == facts.Levels.Length - 1 ? Left : Left * 0.6;

    private void Take(PlacedTasks? placement, string phase)
    {
        if (placement is null || (Best is not null && LevelValues.Compare(placement.Values, Best.Values) >= 0)) return;
        Best = placement;
        if (progress is null) return;
        var schedule = Scheduler.Audited(facts.Problem, placement.ToSchedule(facts, Bounds));
        progress.Report(new ScheduleProgress(phase, clock.Elapsed, schedule.Levels, schedule));
    }

    private void FindAny()
    {
        var model = new ScheduleModel(facts, ranges);
        var solver = new CpSolver { StringParameters = Parameters(Left) };
        var status = Solve(solver, model, null);
        IsProvenImpossible = status == CpSolverStatus.Infeasible;
        if (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible) Take(model.Read(solver), "First calendar");
    }

    private void SearchOrders()
    {
        var orders = new OrderSearches(facts, ranges, limits.Seed, WorkersOfOrders);
        var seconds = limits.Deterministic ? double.MaxValue : Math.Min(Left * MostShareOfOrders, SecondsOfOrders * Math.Pow(facts.Count / 120.0, 2));
        var passes = limits.Deterministic ? 200 : int.MaxValue;
        Take(new WaveSearch(facts, ranges, new ListPlacing(facts, ranges)).Run(Best!, seconds, passes, cancellationToken), "Waves");
        if (IsProven) return;
        var begin = Best!;
        // Where dates are kept and tasks are few, orders save settings that evenings do not, and begin where these began; else they go on from the evenings, which come farther.
        var isHard = facts.Count > OrderSearch.MostTasksWithMemory || IsLate;
        FillEvenings(isHard ? seconds * ShareOfEvenings : Left * ShareOfShortEvenings, "Evenings");
        if (!IsProven) Take(orders.Run(isHard ? Best! : begin, isHard ? seconds * (1 - ShareOfEvenings) : seconds, passes, Bounds, cancellationToken), "Orders");
        if (!IsProven && !isHard) FillEvenings(Left * ShareOfShortEvenings, "Evenings");
    }

    private void FillEvenings(double seconds, string phase)
    {
        var (longest, passes) = limits.Deterministic ? (double.MaxValue, PassesOfEvenings) : (seconds, int.MaxValue);
        Take(evenings.Run(Best!, longest, passes, Bounds, cancellationToken), phase);
    }

    private void Improve(int level)
    {
        var seconds = Share(level);
        if (Places() <= MostPlaces) ImproveWhole(level, seconds);
        else ImproveByStretches(level, seconds);
    }

    private int Places()
    {
        var places = facts.Count;
        for (var task = 0; task < facts.Count; task++)
        {
            if (facts.SetUp[task] != ScheduleFacts.None) places += facts.Windows[facts.Hours[task]].Count(w => w.End > ranges.Earliest[task] && w.Start < Horizon());
        }

        return places;
    }

    private long Horizon()
    {
        var level = facts.Levels.IndexOf((ScheduleLevelKind.AllReady, null));
        return facts.Levels.Take(level).Where((_, i) => Best!.Values[i] > Bounds[i]).Any() ? facts.Problem.HorizonMinutes : Best!.Values[level];
    }

    private void ImproveWhole(int level, double seconds)
    {
        if (!limits.Deterministic && evenings.HasEvenings && facts.Levels[level].Kind is ScheduleLevelKind.Lateness or ScheduleLevelKind.AllReady)
        {
            FillEvenings(seconds * ShareBeforeSolver, Phase(level));
            if (Best!.Values[level] <= Bounds[level]) return;
            seconds *= 1 - ShareBeforeSolver;
        }

        var narrowed = Deadlines.Narrow(facts, ranges, Best!.Values, level);
        var model = new ScheduleModel(facts, narrowed);
        for (var earlier = 0; earlier < level; earlier++) model.Hold(earlier, Best.Values[earlier]);
        model.Aim(level, Bounds[level], Best.Values[level]);
        model.Suggest(Best);
        var solver = new CpSolver { StringParameters = Parameters(seconds) };
        var status = Solve(solver, model, (value, bound) => Tell(level, value, bound));
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible)) return;
        Take(model.Read(solver), Phase(level));
        Bounds[level] = Math.Max(Bounds[level], Math.Min(Best.Values[level], (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6)));
    }

    private void ImproveByStretches(int level, double seconds)
    {
        var stop = Left - seconds;
        var stretches = new StretchSearch(facts, ranges, limits, level, Best!, cancellationToken);
        var orders = new OrderSearches(facts, ranges, limits.Seed + level, WorkersOfOrders);
        while (Left > stop && !IsOver && Best!.Values[level] > Bounds[level])
        {
            FillEvenings(Math.Min(Left - stop, MostSecondsOfEvenings), Phase(level));
            var (turn, passes) = limits.Deterministic ? (double.MaxValue, 50) : (Math.Min(Left - stop, MostSecondsOfOrders), int.MaxValue);
            Take(orders.Run(Best, turn, passes, Bounds, cancellationToken), Phase(level));
            work += Math.Max(LeastWork, stretches.Next(Best, Left - stop));
            Take(stretches.Current, Phase(level));
        }
    }

    private CpSolverStatus Solve(CpSolver solver, ScheduleModel model, Action<long, long>? tell)
    {
        using var watch = tell is null || progress is null ? null : new ImprovementWatch(tell);
        using var stop = cancellationToken.Register(solver.StopSearch);
        var status = watch is null ? solver.Solve(model.Model) : solver.Solve(model.Model, watch);
        work += solver.Response?.DeterministicTime ?? 0;
        return status;
    }

    private void Tell(int level, long value, long bound)
    {
        var levels = facts.Levels.Select((l, i) => i == level
            ? new ScheduleLevel(l.Kind, value, Math.Min(value, Math.Max(bound, Bounds[i])), l.Priority)
            : new ScheduleLevel(l.Kind, Best!.Values[i], Math.Min(Bounds[i], Best.Values[i]), l.Priority));
        progress!.Report(new ScheduleProgress(Phase(level), clock.Elapsed, [.. levels], null));
    }

    private string Phase(int level) => facts.Levels[level].Kind switch
    {
        ScheduleLevelKind.Lateness => "Dates kept",
        ScheduleLevelKind.AllReady => "All ready",
        ScheduleLevelKind.Slack => "Time to spare",
        ScheduleLevelKind.MoreSetUps or ScheduleLevelKind.SetUps => "Setting up",
        _ => "Evenings as before",
    };

    private string Parameters(double seconds) => SolverWords(limits, seconds);

    /// <summary>What the solver is told.</summary>
    internal static string SolverWords(PlanLimits limits, double seconds)
    {
        var workers = limits.Deterministic ? 1 : limits.Workers;
        var limit = limits.Deterministic ? "max_deterministic_time" : "max_time_in_seconds";
        return string.Create(CultureInfo.InvariantCulture, $"random_seed:{limits.Seed} num_workers:{workers} {limit}:{Math.Max(0.01, seconds):0.###}");
    }
}
