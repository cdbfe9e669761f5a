using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar.Building;

/// <summary>
/// Puts the tasks of an evening in the order in which somebody would do them: all of one setting before the next is taken up, as far as links allow. Nothing that counts becomes worse by it.
/// </summary>
internal sealed class EveningOrder
{
    // Orders tried beyond one for each evening; with a few hundred tasks that is a fraction of a second. Our own choice.
    private const int MostMoves = 300;

    private readonly ScheduleFacts facts;
    private readonly ListPlacing placing;
    private readonly ImmutableArray<ScheduleWindow> evenings;
    private PlacedTasks best;
    private int changes;
    private int moves;

    private EveningOrder(ScheduleFacts facts, StartRanges ranges, PlacedTasks placed)
    {
        (this.facts, best) = (facts, placed);
        placing = new ListPlacing(facts, ranges);
        evenings = CalendarWindows.Of(facts.Problem);
        changes = Changes(facts, evenings, placed.Start);
    }

    /// <summary>The same tasks in such an order; what was given when there is none that is as good.</summary>
    internal static PlacedTasks Of(ScheduleFacts facts, StartRanges ranges, PlacedTasks placed)
    {
        if (facts.SetUps.Length == 0) return placed;
        var order = new EveningOrder(facts, ranges, placed);
        foreach (var evening in order.evenings) order.Try(evening);
        foreach (var evening in order.evenings) order.JoinRuns(evening);
        return order.best;
    }

    /// <summary>How often another setting is taken up within an evening, all of them together.</summary>
    internal static int Changes(ScheduleFacts facts, int[] start) => Changes(facts, CalendarWindows.Of(facts.Problem), start);

    private static int Changes(ScheduleFacts facts, ImmutableArray<ScheduleWindow> evenings, int[] start)
    {
        var changes = 0;
        foreach (var evening in Enumerable.Range(0, facts.Count).Where(t => facts.Hours[t] != ScheduleFacts.None).GroupBy(t => evenings.FirstOrDefault(e => IsIn(e, start[t]))))
        {
            var settings = evening.OrderBy(t => start[t]).Select(t => facts.SetUp[t]).ToArray();
            changes += settings.Zip(settings.Skip(1)).Count(pair => pair.First != pair.Second);
        }

        return changes;
    }

    private static bool IsIn(ScheduleWindow evening, int start) => evening.Start <= start && start < evening.End;

    private void Try(ScheduleWindow evening)
    {
        if (Inside(evening) is { Length: > 0 } inside) TryOrder(BySetting(inside));
    }

    /// <summary>The tasks of an evening, in their order.</summary>
    private int[] Inside(ScheduleWindow evening) =>
        [.. Enumerable.Range(0, facts.Count).Where(t => facts.Hours[t] != ScheduleFacts.None && IsIn(evening, best.Start[t])).OrderBy(t => best.Start[t])];

    /// <summary>Tries an order of an evening's tasks; true when it is no worse and settings change less often.</summary>
    private bool TryOrder(List<int> inside)
    {
        int[] order = [.. Enumerable.Range(0, facts.Count).OrderBy(t => best.Start[t])];
        var isInside = inside.ToHashSet();
        var first = Array.FindIndex(order, isInside.Contains);
        int[] tried = [.. order[..first], .. inside, .. order[first..].Where(t => !isInside.Contains(t))];
        var keys = new long[facts.Count];
        for (var i = 0; i < tried.Length; i++) keys[tried[i]] = i;
        if (!placing.Run(keys)) return false;
        var placed = PlacedTasks.Of(facts, placing.Bench);
        if (LevelValues.Compare(placed.Values, best.Values) > 0 || Changes(facts, evenings, placed.Start) is var fewer && fewer >= changes) return false;
        (best, changes) = (placed, fewer);
        return true;
    }

    private void JoinRuns(ScheduleWindow evening)
    {
        var isBetter = true;
        while (isBetter) isBetter = TryJoin(evening);
    }

    /// <summary>Brings two runs of one setting together, the later one forwards or the earlier one backwards; false when nothing of that is any better.</summary>
    private bool TryJoin(ScheduleWindow evening)
    {
        var runs = Runs(Inside(evening));
        for (var later = 2; later < runs.Count; later++)
        {
            for (var earlier = later - 2; earlier >= 0; earlier--)
            {
                if (facts.SetUp[runs[earlier][0]] != facts.SetUp[runs[later][0]]) continue;
                if (moves >= MostMoves) return false;
                moves += 2;
                var between = runs[(earlier + 1)..later].SelectMany(run => run).ToArray();
                int[] before = [.. runs[..earlier].SelectMany(run => run)], after = [.. runs[(later + 1)..].SelectMany(run => run)];
                if (TryOrder([.. before, .. runs[earlier], .. runs[later], .. between, .. after]) || TryOrder([.. before, .. between, .. runs[earlier], .. runs[later], .. after])) return true;
            }
        }

        return false;
    }

    /// <summary>Tasks one after the other that need the same setting.</summary>
    private List<List<int>> Runs(int[] tasks)
    {
        var runs = new List<List<int>>();
        foreach (var task in tasks)
        {
            if (runs.Count > 0 && facts.SetUp[runs[^1][0]] == facts.SetUp[task]) runs[^1].Add(task);
            else runs.Add([task]);
        }

        return runs;
    }

    /// <summary>Tasks of one setting together, each after those of the evening that it follows; what can be done at once comes before what follows from it, so that one kind of work runs on.</summary>
    private List<int> BySetting(int[] tasks)
    {
        var open = tasks.ToDictionary(t => t, t => facts.Into[t].Count(l => tasks.Contains(l.Before)));
        var wave = tasks.ToDictionary(t => t, _ => 0);
        var left = new List<int>(tasks);
        var order = new List<int>(tasks.Length);
        var setting = ScheduleFacts.None;
        while (left.Count > 0)
        {
            int[] next = [.. left.Where(t => open[t] == 0 && facts.SetUp[t] == setting)];
            if (next.Length == 0)
            {
                setting = NextSetting(left, open);
                continue;
            }

            var task = next.MinBy(t => wave[t]);
            left.Remove(task);
            order.Add(task);
            foreach (var link in facts.OutOf[task].Where(l => open.ContainsKey(l.After)))
            {
                open[link.After]--;
                wave[link.After] = Math.Max(wave[link.After], wave[task] + 1);
            }
        }

        return order;
    }

    // The one of whose tasks the fewest would have to be come back for; of equals the one that came first.
    private int NextSetting(List<int> left, Dictionary<int, int> open) => left.Where(t => open[t] == 0).Select(t => facts.SetUp[t]).Distinct().MinBy(setting => Blocked(left, open, setting));

    private int Blocked(List<int> left, Dictionary<int, int> open, int setting)
    {
        // Tasks of the setting that wait for one of another setting, itself or through others of this one.
        var done = new HashSet<int>();
        for (var isMore = true; isMore;)
        {
            isMore = false;
            foreach (var task in left.Where(t => facts.SetUp[t] == setting && !done.Contains(t)))
            {
                if (facts.Into[task].Count(l => done.Contains(l.Before)) >= open[task]) isMore |= done.Add(task);
            }
        }

        return left.Count(t => facts.SetUp[t] == setting) - done.Count;
    }
}
