using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar.Advice;

/// <summary>
/// Goes through the work of a calendar again and again with drawn minutes. The calendar's order is kept: one after the other, each task starts as early as those before it, links, hands, stations, clamps,
/// settings and hours allow.
/// </summary>
internal sealed class WorkRuns
{
    /// <summary>Run number that stands for the planned minutes.</summary>
    internal const int AsPlanned = -1;

    private static readonly ulong Pace = Draws.Name("pace");

    private readonly ChanceRules rules;
    private readonly TaskSpread[] spreads;
    private readonly ScheduleFacts facts;
    private readonly ListPlacing placing;
    private readonly long[] keys;
    private readonly int[] most;
    private readonly LinkFacts[][] into;
    private readonly LinkFacts[][] outOf;
    private readonly (int Task, int Wait)[][] last;
    private readonly int[] floor;

    /// <summary>Of a schedule.</summary>
    /// <param name="problem">A problem without faults.</param>
    /// <param name="schedule">A schedule of it: its order counts.</param>
    /// <param name="work">By id, what is known of tasks.</param>
    /// <param name="rules">How to draw.</param>
    internal WorkRuns(ScheduleProblem problem, Schedule schedule, IReadOnlyDictionary<string, WorkTask> work, ChanceRules rules)
    {
        this.rules = rules;
        spreads = [.. problem.Tasks.Select(t => TaskSpread.Of(t, work.GetValueOrDefault(t.Id)))];
        facts = new ScheduleFacts(Loosened(problem));
        placing = new ListPlacing(facts, new StartRanges(facts, facts.LatestEnd));
        var asPlanned = new ScheduleFacts(problem);
        (into, outOf, last) = (asPlanned.Into, asPlanned.OutOf, [.. asPlanned.Deliveries.Select(d => d.Last)]);
        most = [.. Enumerable.Range(0, facts.Count).Select(LongestThatFits)];
        var starts = schedule.Tasks.ToDictionary(t => t.Task, t => t.Start, StringComparer.Ordinal);
        keys = [.. problem.Tasks.Select(t => (long)starts[t.Id])];
        floor = new int[facts.Count];
        Ready = new int[facts.Deliveries.Length];
        KeepDates(problem, schedule, starts);
    }

    /// <summary>By delivery: when it was ready in the last run, or never. [min]</summary>
    internal int[] Ready { get; }

    /// <summary>Where everything stood in the last run.</summary>
    internal Bench Bench => placing.Bench;

    /// <summary>Minutes in the last run, by task.</summary>
    internal IReadOnlyList<int> Minutes => facts.Minutes;

    /// <summary>All tasks that a delivery waits for, near and far.</summary>
    internal HashSet<int> TasksOf(int delivery)
    {
        var found = new HashSet<int>();
        var open = new Stack<int>(last[delivery].Select(l => l.Task));
        while (open.TryPop(out var task))
        {
            if (!found.Add(task)) continue;
            foreach (var link in into[task]) open.Push(link.Before);
        }

        return found;
    }

    /// <summary>Goes through the work once.</summary>
    /// <param name="run">Number of the run, from zero, or <see cref="AsPlanned"/>.</param>
    /// <param name="held">Tasks that are held back; null for none.</param>
    /// <param name="until">They start no earlier. [min]</param>
    internal void Run(int run, HashSet<int>? held = null, int until = 0)
    {
        Draw(run);
        for (var task = 0; task < facts.Count; task++) placing.Floor[task] = held?.Contains(task) == true ? Math.Max(floor[task], until) : floor[task];
        var isPlaced = placing.Run(keys);
        for (var i = 0; i < Ready.Length; i++)
        {
            Ready[i] = isPlaced ? LevelValues.Ready(facts, facts.Deliveries[i], placing.Bench.Start) : ScheduleFacts.Never;
        }
    }

    // What the maker put at a time starts no earlier; it need not hold when the work before it takes longer. Least minutes keep the ranges of starts wide enough for every run.
    private ScheduleProblem Loosened(ScheduleProblem problem) => problem with
    {
        Tasks =
        [
            .. problem.Tasks.Select((t, i) => t.FixedStart is { } start && spreads[i].Most > spreads[i].Least
                ? t with { Minutes = 0, FixedStart = null, EarliestStart = Math.Max(t.EarliestStart, start) }
                : t.FixedStart is null ? t with { Minutes = t.SetUp.Length > 0 ? 1 : 0 } : t),
        ],
        Links = [.. problem.Links.Select(l => l with { LeastMinutes = 0 })],
        Deliveries = [.. problem.Deliveries.Select(d => d with { Last = [.. d.Last] })],
    };

    // Placing one after the other sets up just before a task and never earlier, so the order alone may give other times than the calendar. Of a few orders, with tasks that wait for nothing, for their evening or
    // for their very minute, the one is taken that comes nearest with the planned minutes; of equals the freest.
    private void KeepDates(ScheduleProblem problem, Schedule schedule, Dictionary<string, int> starts)
    {
        int[] planned = [.. problem.Deliveries.Select(d => d.Last.Select(l => starts[l.Task] + problem.Tasks[facts.Number[l.Task]].Minutes + l.WaitMinutes).DefaultIfEmpty(0).Max())];
        int[] start = [.. schedule.Tasks.Select(t => t.Start)];
        int[] evening = [.. start.Select((s, task) => facts.Hours[task] == ScheduleFacts.None ? s : facts.Windows[facts.Hours[task]].Last(w => w.Start <= s).Start)];
        long[] byStart = [.. start], bySetting = [.. schedule.Tasks.Select(t => SettingStart(problem, schedule, t))];
        var best = (Lost: int.MaxValue, Later: long.MaxValue, Keys: byStart, Floor: floor);
        foreach (var someFloor in (int[][])[new int[facts.Count], evening, start])
        {
            foreach (var someKeys in (long[][])[byStart, bySetting])
            {
                someKeys.CopyTo(keys, 0);
                someFloor.CopyTo(floor, 0);
                Run(AsPlanned);
                var lost = planned.Index().Count(p => facts.Deliveries[p.Index].Due is { } due && p.Item <= due && Ready[p.Index] > due);
                var later = planned.Index().Sum(p => Math.Max(0L, Ready[p.Index] - p.Item));
                if ((lost, later).CompareTo((best.Lost, best.Later)) < 0) best = (lost, later, someKeys, someFloor);
            }
        }

        best.Keys.CopyTo(keys, 0);
        best.Floor.CopyTo(floor, 0);
    }

    // A task that a setting was set up for comes in the order where the setting up does.
    private static long SettingStart(ScheduleProblem problem, Schedule schedule, ScheduledTask task)
    {
        var setting = problem.Tasks.First(t => t.Id == task.Task).SetUp;
        return schedule.SetUps.Where(s => s.SetUp == setting && s.Start <= task.Start && s.End >= task.End).Select(s => (long)s.Start).DefaultIfEmpty(task.Start).Max();
    }

    private void Draw(int run)
    {
        var pace = run == AsPlanned ? 1 : Draws.Triangular(Draws.Even(rules.Seed, run, Pace), rules.QuickPaceFactor, 1, rules.SlowPaceFactor);
        for (var task = 0; task < facts.Count; task++)
        {
            facts.Minutes[task] = run == AsPlanned ? spreads[task].Likely : Math.Min(spreads[task].Minutes(rules, run, pace), most[task]);
        }

        for (var task = 0; task < facts.Count; task++)
        {
            Shift(run, into[task], facts.Into[task]);
            Shift(run, outOf[task], facts.OutOf[task]);
        }

        for (var i = 0; i < last.Length; i++)
        {
            for (var j = 0; j < last[i].Length; j++)
            {
                var (task, wait) = last[i][j];
                facts.Deliveries[i].Last[j] = (task, Wait(run, task, wait));
            }
        }
    }

    private void Shift(int run, LinkFacts[] planned, LinkFacts[] now)
    {
        for (var i = 0; i < planned.Length; i++) now[i] = planned[i] with { Least = Wait(run, planned[i].Before, planned[i].Least) };
    }

    // Only the wait that the band belongs to gets shorter: the task's own.
    private int Wait(int run, int task, int planned) => run == AsPlanned || planned != spreads[task].Wait ? planned : planned - spreads[task].Sooner(rules, run);

    // What takes longer than any window holds is broken off there: the rest is not counted.
    private int LongestThatFits(int task) => facts.Hours[task] == ScheduleFacts.None
        ? int.MaxValue
        : Math.Max(spreads[task].Likely, facts.Windows[facts.Hours[task]].Max(w => w.Minutes) - facts.SetUpMinutes(task));
}
