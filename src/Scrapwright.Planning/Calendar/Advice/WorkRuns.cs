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

    // The order alone may place tasks otherwise than the calendar has them, settings being what they are. As far as that makes a gift later, tasks wait for their evening, else for their very minute.
    private void KeepDates(ScheduleProblem problem, Schedule schedule, Dictionary<string, int> starts)
    {
        int[] planned = [.. problem.Deliveries.Select(d => d.Last.Select(l => starts[l.Task] + problem.Tasks[facts.Number[l.Task]].Minutes + l.WaitMinutes).DefaultIfEmpty(0).Max())];
        if (IsNoLater(planned)) return;
        for (var task = 0; task < facts.Count; task++)
        {
            var start = schedule.Tasks[task].Start;
            floor[task] = facts.Hours[task] == ScheduleFacts.None ? start : facts.Windows[facts.Hours[task]].Last(w => w.Start <= start).Start;
        }

        if (IsNoLater(planned)) return;
        for (var task = 0; task < facts.Count; task++) floor[task] = schedule.Tasks[task].Start;
    }

    private bool IsNoLater(int[] planned)
    {
        Run(AsPlanned);
        return Ready.Zip(planned).All(pair => pair.First <= pair.Second);
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
