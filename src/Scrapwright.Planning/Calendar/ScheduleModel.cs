using Google.OrTools.Sat;
using Google.OrTools.Util;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar;

/// <summary>A calendar as a constraint model: where each task starts, in which windows each setting stands, and nothing taken twice.</summary>
internal sealed class ScheduleModel
{
    private readonly ScheduleFacts facts;
    private readonly StartRanges ranges;
    private readonly IntVar[] start;
    private readonly List<(IntervalVar Interval, int Amount)>[] taken;
    private readonly List<IntervalVar>[] settings;
    private readonly List<Standing> standings = [];

    /// <summary>All rules, no aim yet.</summary>
    /// <param name="facts">The problem.</param>
    /// <param name="ranges">When tasks can start; what holds of deadlines is in them.</param>
    internal ScheduleModel(ScheduleFacts facts, StartRanges ranges)
    {
        (this.facts, this.ranges) = (facts, ranges);
        taken = [.. facts.Capacity.Select(_ => new List<(IntervalVar, int)>())];
        settings = [.. facts.Capacity.Select(_ => new List<IntervalVar>())];
        start = [.. Enumerable.Range(0, facts.Count).Select(AddTask)];
        AddLinks();
        for (var key = 0; key < facts.SetUps.Length; key++) AddSettings(key);
        AddCapacities();
    }

    /// <summary>The model.</summary>
    internal CpModel Model { get; } = new();

    /// <summary>From now on a level may not get worse.</summary>
    internal void Hold(int level, long value)
    {
        if (facts.Levels[level].Kind != ScheduleLevelKind.AllReady) Model.Add(Worth(level, 0, value) <= value);
    }

    /// <summary>Makes a level as small as possible.</summary>
    /// <param name="level">Number of the level.</param>
    /// <param name="bound">It is no smaller than this.</param>
    /// <param name="known">It need not be larger than this.</param>
    internal void Aim(int level, long bound, long known)
    {
        var worth = Worth(level, bound, known);
        Model.Add(worth >= bound);
        Model.Minimize(worth);
    }

    /// <summary>Makes all ready early, and of equals those tasks early that have most after them.</summary>
    /// <param name="weights">By task; zero leaves it out.</param>
    internal void AimEarly(long[] weights) => Model.Minimize(LinearExpr.WeightedSum(start, weights));

    /// <summary>Where to begin the search.</summary>
    internal void Suggest(PlacedTasks placement)
    {
        Model.ClearHints();
        for (var task = 0; task < facts.Count; task++) Model.AddHint(start[task], placement.Start[task]);
        foreach (var standing in standings) standing.Suggest(Model, placement);
    }

    /// <summary>The placement found, with settings no longer than their tasks.</summary>
    internal PlacedTasks Read(CpSolver solver)
    {
        int[] starts = [.. start.Select(s => (int)solver.Value(s))];
        var stands = new List<(int, int, int)>();
        foreach (var standing in standings)
        {
            if (!solver.BooleanValue(standing.Stands)) continue;
            int[] tasks = [.. standing.Tasks.Where(t => solver.BooleanValue(t.In)).Select(t => t.Task)];
            if (tasks.Length == 0) continue;
            stands.Add((standing.Key, (int)solver.Value(standing.From), tasks.Max(t => starts[t] + facts.Minutes[t])));
        }

        return new PlacedTasks(starts, [.. stands], LevelValues.Of(facts, starts, stands.Sum(s => (long)facts.SetUps[s.Item1].Minutes)));
    }

    private IntVar AddTask(int task)
    {
        var variable = Model.NewIntVarFromDomain(Starts(task), "");
        foreach (var need in facts.Needs[task])
        {
            var minutes = facts.Minutes[task] + need.Held;
            if (minutes > 0) taken[need.Resource].Add((Model.NewFixedSizeIntervalVar(variable, minutes, ""), need.Amount));
        }

        return variable;
    }

    /// <summary>Every start that lies in a window.</summary>
    private Domain Starts(int task)
    {
        var (earliest, latest) = (ranges.Earliest[task], ranges.Latest[task]);
        if (facts.Hours[task] == ScheduleFacts.None) return new Domain(earliest, latest);
        var set = facts.SetUpMinutes(task);
        return Domain.FromIntervals(
        [
            .. facts.Windows[facts.Hours[task]]
                .Select(w => new long[] { Math.Max(earliest, w.Start + set), Math.Min(latest, w.End - facts.Minutes[task]) })
                .Where(span => span[0] <= span[1]),
        ]);
    }

    private void AddLinks()
    {
        foreach (var link in facts.Into.SelectMany(links => links))
        {
            var end = facts.Minutes[link.Before];
            if (ranges.Latest[link.Before] + end + link.Least > ranges.Earliest[link.After]) Model.Add(start[link.After] >= start[link.Before] + (end + link.Least));
            if (link.HasMost) Model.Add(start[link.After] <= start[link.Before] + (end + link.Most));
        }
    }

    /// <summary>One setting for each window in which one of its tasks can lie, set up at most once there.</summary>
    private void AddSettings(int key)
    {
        var tasks = Enumerable.Range(0, facts.Count).Where(t => facts.SetUp[t] == key).ToArray();
        if (tasks.Length == 0) return;
        var places = tasks.ToDictionary(t => t, _ => new List<BoolVar>());
        foreach (var window in facts.Windows[facts.SetUpHours[key]])
        {
            int[] some = [.. tasks.Where(t => CanLieIn(t, window))];
            if (some.Length == 0) continue;
            var standing = AddStanding(key, window, some);
            foreach (var (task, isIn) in standing.Tasks) places[task].Add(isIn);
        }

        foreach (var task in tasks) Model.AddExactlyOne(places[task]);
    }

    private bool CanLieIn(int task, ScheduleWindow window) =>
        Math.Max(ranges.Earliest[task], window.Start + facts.SetUpMinutes(task)) <= Math.Min(ranges.Latest[task], window.End - facts.Minutes[task]);

    private Standing AddStanding(int key, ScheduleWindow window, int[] tasks)
    {
        var (station, maker, minutes) = facts.SetUps[key];
        var stands = Model.NewBoolVar("");
        var from = Model.NewIntVar(window.Start, window.End, "");
        var to = Model.NewIntVar(window.Start, window.End, "");
        var length = Model.NewIntVar(0, window.Minutes, "");
        settings[station].Add(Model.NewOptionalIntervalVar(from, length, to, stands, ""));
        if (minutes > 0) taken[maker].Add((Model.NewOptionalFixedSizeIntervalVar(from, minutes, stands, ""), 1));
        var inside = new (int Task, BoolVar In)[tasks.Length];
        for (var i = 0; i < tasks.Length; i++)
        {
            var task = tasks[i];
            var isIn = Model.NewBoolVar("");
            inside[i] = (task, isIn);
            Model.AddImplication(isIn, stands);
            Model.Add(start[task] >= from + minutes).OnlyEnforceIf(isIn);
            Model.Add(start[task] + facts.Minutes[task] <= to).OnlyEnforceIf(isIn);
        }

        Model.AddBoolOr([.. inside.Select(i => (ILiteral)i.In), stands.Not()]);
        var standing = new Standing(key, window, stands, from, to, length, inside);
        standings.Add(standing);
        return standing;
    }

    private void AddCapacities()
    {
        for (var resource = 0; resource < taken.Length; resource++)
        {
            var (some, capacity) = (taken[resource], facts.Capacity[resource]);
            if (settings[resource].Count > 1) Model.AddNoOverlap(settings[resource]);
            if (some.Sum(s => (long)s.Amount) <= capacity) continue;
            if (some.All(s => s.Amount * 2 > capacity))
            {
                Model.AddNoOverlap(some.Select(s => s.Interval));
                continue;
            }

            var cumulative = Model.AddCumulative(capacity);
            foreach (var (interval, amount) in some) cumulative.AddDemand(interval, amount);
        }
    }

    private LinearExpr Worth(int level, long bound, long known)
    {
        var (kind, priority) = facts.Levels[level];
        return kind switch
        {
            ScheduleLevelKind.Lateness or ScheduleLevelKind.Slack => Over(kind, priority!.Value),
            ScheduleLevelKind.AllReady => AllReady(bound, known),
            ScheduleLevelKind.MoreSetUps => MoreSetUps(),
            ScheduleLevelKind.SetUps => SetUps(),
            _ => Moved(),
        };
    }

    /// <summary>Hours late, or days of slack that are missing.</summary>
    private LinearExpr Over(ScheduleLevelKind kind, int priority)
    {
        var step = LevelValues.Step(kind);
        var sum = new List<IntVar>();
        foreach (var delivery in facts.Deliveries.Where(d => d.Priority == priority && d.By(kind) is not null))
        {
            var by = delivery.By(kind)!.Value;
            var most = LevelValues.Steps(LevelValues.Ready(facts, delivery, ranges.Latest), by, step);
            var over = Model.NewIntVar(LevelValues.Steps(LevelValues.Ready(facts, delivery, ranges.Earliest), by, step), most, "");
            sum.Add(over);
            foreach (var (task, wait) in delivery.Last) Model.Add(over * step >= start[task] + (facts.Minutes[task] + wait - by));
        }

        return LinearExpr.Sum(sum);
    }

    private LinearExpr SetUps() => LinearExpr.WeightedSum(standings.Select(s => s.Stands), standings.Select(s => (long)facts.SetUps[s.Key].Minutes));

    private IntVar MoreSetUps()
    {
        var more = Model.NewIntVar(0, standings.Sum(s => (long)facts.SetUps[s.Key].Minutes), "");
        Model.Add(more >= SetUps() - facts.Problem.SetUpMinutesBefore!.Value);
        return more;
    }

    private LinearExpr AllReady(long bound, long known)
    {
        var step = facts.Problem.ReadyStepMinutes;
        var offset = facts.Problem.ReadyOffsetMinutes;
        var steps = Model.NewIntVar(Math.Max(0, (bound - offset) / step), Math.Max(0, (known - offset) / step), "");
        var ready = (steps * step) + offset;
        for (var task = 0; task < facts.Count; task++)
        {
            if (facts.OutOf[task].Length == 0) Model.Add(ready >= start[task] + facts.Minutes[task]);
        }

        foreach (var (task, wait) in facts.Deliveries.SelectMany(d => d.Last))
        {
            if (wait > 0) Model.Add(ready >= start[task] + (facts.Minutes[task] + wait));
        }

        return ready;
    }

    private LinearExpr Moved()
    {
        var moved = new List<BoolVar>();
        for (var task = 0; task < facts.Count; task++)
        {
            if (facts.Stay[task] is not var (from, to)) continue;
            var other = Model.NewBoolVar("");
            Model.Add(start[task] >= from).OnlyEnforceIf(other.Not());
            Model.Add(start[task] <= to).OnlyEnforceIf(other.Not());
            moved.Add(other);
        }

        return LinearExpr.Sum(moved);
    }
}
