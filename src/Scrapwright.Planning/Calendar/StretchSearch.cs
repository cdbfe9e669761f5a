using Google.OrTools.Sat;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar;

/// <summary>
/// Large neighbourhoods by time: the tasks of one stretch are placed anew by the solver, as early as they can be, while all else stays; then everything is placed once more in the order found, which lets what
/// comes later move up.
/// </summary>
internal sealed class StretchSearch(ScheduleFacts facts, StartRanges ranges, PlanLimits limits, int level, PlacedTasks first, CancellationToken cancellationToken)
{
    // So many tasks at once are solved in about a second. Our own choice, by measurement.
    private const int MostTasks = 40;
    private const double MostSeconds = 1.5;

    // A day: tasks may go to gaps that the evening before has left. [min]
    private const int BeforeStretch = 1440;

    private readonly ListPlacing placing = new(facts, ranges);
    private readonly long[] weights = [.. PriorityRules.Tails(facts).Select(tail => 1 + (tail / 60))];
    private readonly Random random = new(limits.Seed);
    private int from;

    /// <summary>Where the search stands: as good as where it began or better, and all in all earlier.</summary>
    internal PlacedTasks Current { get; private set; } = first;

    /// <summary>Tries one stretch.</summary>
    /// <param name="best">Taken over where it is better than where the search stands.</param>
    /// <param name="seconds">Longest time, or work.</param>
    /// <returns>Work done.</returns>
    internal double Next(PlacedTasks best, double seconds)
    {
        Consider(best);
        var order = Enumerable.Range(0, facts.Count).OrderBy(t => Current.Start[t]).ToArray();
        if (from >= facts.Count) from = random.Next(MostTasks / 2);
        int[] free = order[from..Math.Min(facts.Count, from + MostTasks)];
        from += MostTasks / 2;
        var model = new ScheduleModel(facts, Stretch(Current, free));
        for (var i = 0; i <= level; i++) model.Hold(i, Current.Values[i]);
        model.AimEarly([.. weights.Select((weight, task) => free.Contains(task) ? weight : 0)]);
        model.Suggest(Current);
        var solver = new CpSolver { StringParameters = ScheduleSearch.SolverWords(limits, Math.Min(seconds, MostSeconds)) };
        using var stop = cancellationToken.Register(solver.StopSearch);
        var status = solver.Solve(model.Model);
        if (status is CpSolverStatus.Optimal or CpSolverStatus.Feasible) Accept(model.Read(solver));
        return solver.Response?.DeterministicTime ?? 0;
    }

    private void Accept(PlacedTasks found)
    {
        Consider(found);
        if (placing.Run([.. Current.Start.Select(s => (long)s)])) Consider(PlacedTasks.Of(facts, placing.Bench));
    }

    private void Consider(PlacedTasks next)
    {
        var values = next.Values.AsSpan(0, level + 1).SequenceCompareTo(Current.Values.AsSpan(0, level + 1));
        if (values < 0 || (values == 0 && Earliness(next) < Earliness(Current))) Current = next;
    }

    private long Earliness(PlacedTasks some) => some.Start.Select((start, task) => start * weights[task]).Sum();

    private StartRanges Stretch(PlacedTasks best, int[] free)
    {
        var narrowed = Deadlines.Narrow(facts, ranges, best.Values, level);
        var isFree = new bool[facts.Count];
        foreach (var task in free) isFree[task] = true;
        var (begin, end) = (free.Min(t => best.Start[t]) - BeforeStretch, free.Max(t => best.Start[t]));
        var earliest = new int[facts.Count];
        var latestEnd = new int[facts.Count];
        for (var task = 0; task < facts.Count; task++)
        {
            earliest[task] = isFree[task] ? Math.Min(best.Start[task], Math.Max(narrowed.Earliest[task], begin)) : best.Start[task];
            latestEnd[task] = (isFree[task] ? Math.Min(narrowed.Latest[task], end) : best.Start[task]) + facts.Minutes[task];
        }

        return new StartRanges(facts, latestEnd, earliest);
    }
}
