using Google.OrTools.Sat;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar;

/// <summary>
/// Large neighbourhoods by time: the tasks of one stretch are placed anew by the solver, as early as they can be, while all else stays; then everything is placed once more in the order found, which lets what
/// comes later move up.
/// </summary>
internal sealed class StretchSearch(ScheduleFacts facts, StartRanges ranges, PlanLimits limits, int level, CancellationToken cancellationToken)
{
    // So many tasks at once are solved in about a second. Our own choice, by measurement.
    private const int MostTasks = 60;

    private readonly ListPlacing placing = new(facts, ranges);
    private readonly long[] tails = PriorityRules.Tails(facts);
    private readonly Random random = new(limits.Seed);
    private int from;

    /// <summary>One stretch; null when nothing better came of it.</summary>
    internal PlacedTasks? Next(PlacedTasks best, double seconds, out double work)
    {
        var order = Enumerable.Range(0, facts.Count).OrderBy(t => best.Start[t]).ToArray();
        if (from >= facts.Count) from = -random.Next(MostTasks / 2);
        int[] free = order[Math.Max(0, from)..Math.Min(facts.Count, Math.Max(0, from) + MostTasks)];
        from += MostTasks / 2;
        var some = Stretch(best, free);
        var model = new ScheduleModel(facts, some);
        for (var i = 0; i <= level; i++) model.Hold(i, best.Values[i]);
        var weights = new long[facts.Count];
        foreach (var task in free) weights[task] = 1 + (tails[task] / 60);
        model.AimEarly(weights);
        model.Suggest(best);
        var solver = new CpSolver { StringParameters = ScheduleSearch.SolverWords(limits, Math.Min(seconds, 2)) };
        using var stop = cancellationToken.Register(solver.StopSearch);
        var status = solver.Solve(model.Model);
        work = solver.Response?.DeterministicTime ?? 0;
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? PlacedAgain(model.Read(solver)) : null;
    }

    private PlacedTasks PlacedAgain(PlacedTasks found)
    {
        var keys = found.Start.Select(s => (long)s).ToArray();
        if (!placing.Run(keys)) return found;
        var again = PlacedTasks.Of(facts, placing.Bench);
        return LevelValues.Compare(again.Values, found.Values) < 0 ? again : found;
    }

    private StartRanges Stretch(PlacedTasks best, int[] free)
    {
        var narrowed = Deadlines.Narrow(facts, ranges, best.Values, level);
        var isFree = new bool[facts.Count];
        foreach (var task in free) isFree[task] = true;
        var earliest = new int[facts.Count];
        var latestEnd = new int[facts.Count];
        for (var task = 0; task < facts.Count; task++)
        {
            earliest[task] = isFree[task] ? narrowed.Earliest[task] : best.Start[task];
            latestEnd[task] = (isFree[task] ? narrowed.Latest[task] : best.Start[task]) + facts.Minutes[task];
        }

        return new StartRanges(facts, latestEnd, earliest);
    }
}
