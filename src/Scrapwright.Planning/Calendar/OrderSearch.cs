using System.Diagnostics;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar;

/// <summary>Changes the order in which tasks are placed, a little at a time, and keeps what is no worse.</summary>
internal sealed class OrderSearch
{
    // So many orders without a better one, and the search goes back to the best. Our own choice, by measurement.
    private const int MostInVain = 400;
    private const int MostInVainWithMemory = 2000;

    /// <summary>With more tasks than this it goes downhill only: the way over what is worse takes too long. Measured on the invented shop of the benchmarks.</summary>
    internal const int MostTasksWithMemory = 300;

    // Definition: minutes of a day.
    private const int Day = 1440;

    private readonly ScheduleFacts facts;
    private readonly ListPlacing placing;
    private readonly Backwards? backwards;
    private readonly Random random;
    private readonly int ready;
    private readonly bool[][] needed;
    private readonly int[] timesNeeded;

    /// <summary>A search that has not begun.</summary>
    internal OrderSearch(ScheduleFacts facts, StartRanges ranges, int seed)
    {
        this.facts = facts;
        placing = new ListPlacing(facts, ranges);
        random = new Random(seed);
        ready = facts.Levels.IndexOf((ScheduleLevelKind.AllReady, null));
        backwards = Backwards.For(facts);
        needed = [.. facts.Deliveries.Select(Needed)];
        timesNeeded = [.. Enumerable.Range(0, facts.Count).Select(t => needed.Count(n => n[t]))];
    }

    /// <summary>The best found; the first one when nothing is better.</summary>
    /// <param name="first">Where to begin.</param>
    /// <param name="seconds">Longest time.</param>
    /// <param name="passes">Most orders tried.</param>
    /// <param name="bounds">It ends when these are reached.</param>
    /// <param name="cancellationToken">Ends it.</param>
    internal PlacedTasks Run(PlacedTasks first, double seconds, int passes, long[] bounds, CancellationToken cancellationToken)
    {
        var clock = Stopwatch.StartNew();
        var (best, current) = (first, first);
        var memory = facts.SetUps.Length == 0 || facts.Count > MostTasksWithMemory ? null : new AcceptanceMemory(facts, first);
        var since = 0;
        for (var pass = 0; pass < passes && clock.Elapsed.TotalSeconds < seconds && !cancellationToken.IsCancellationRequested; pass++)
        {
            if (best.Values.AsSpan().SequenceEqual(bounds)) break;
            if (!placing.Run(Changed(current))) continue;
            var next = PlacedTasks.Of(facts, placing.Bench);
            if (backwards is not null) next = backwards.Improve(next, placing);
            if (memory is null ? IsNoWorse(next, current) : memory.Accepts(next)) current = next;
            if (LevelValues.Compare(next.Values, best.Values) < 0)
            {
                best = next;
                since = 0;
            }
            else if (++since > (memory is null ? MostInVain : MostInVainWithMemory))
            {
                current = best;
                since = 0;
                memory?.Begin(best);
            }
        }

        return best;
    }

    /// <summary>As good until all is ready, and all in all not later by more than a little: from there something better may be near.</summary>
    private bool IsNoWorse(PlacedTasks next, PlacedTasks current)
    {
        var values = next.Values.AsSpan(0, ready + 1).SequenceCompareTo(current.Values.AsSpan(0, ready + 1));
        return values != 0 ? values < 0 : Sum(next) <= Sum(current) * 1.0003;
    }

    private static double Sum(PlacedTasks some)
    {
        long sum = 0;
        foreach (var start in some.Start) sum += start;
        return sum;
    }

    private int Way() => (facts.SetUps.Length, facts.Deliveries.Length) switch
    {
        (0, _) => random.Next(3),
        (_, 0) => random.Next(5),
        _ => random.Next(7),
    };

    /// <summary>By task: a delivery waits for it.</summary>
    private bool[] Needed(DeliveryFacts delivery)
    {
        var waits = new bool[facts.Count];
        foreach (var (task, _) in delivery.Last) waits[task] = true;
        for (var i = facts.Count - 1; i >= 0; i--) waits[facts.Order[i]] |= facts.OutOf[facts.Order[i]].Any(l => waits[l.After]);
        return waits;
    }

    /// <summary>The order of a placement with some tasks earlier or later.</summary>
    private long[] Changed(PlacedTasks placement)
    {
        var count = facts.Count;
        var order = Enumerable.Range(0, count).OrderBy(t => placement.Start[t]).ToArray();
        var keys = new long[count];
        for (var i = 0; i < count; i++) keys[order[i]] = i * 1000L;
        var way = Way();
        if (way == 0)
        {
            // All, by chance, but not far.
            var reach = 1000 * (1 + random.Next(Math.Max(1, count / 10)));
            for (var t = 0; t < count; t++) keys[t] += random.Next(-reach, reach + 1);
        }
        else if (way == 1)
        {
            // A few, far.
            for (var i = 1 + random.Next(4); i > 0; i--) keys[random.Next(count)] = random.Next(count) * 1000L;
        }
        else if (way == 5)
        {
            // All that one delivery needs, up to four days earlier or later; what others need too goes along, or stays.
            var tasks = needed[random.Next(needed.Length)];
            var shift = random.Next(-4 * Day, 4 * Day);
            var goesAlong = random.Next(2) == 0;
            for (var t = 0; t < count; t++) keys[t] = placement.Start[t] + (tasks[t] && (goesAlong || timesNeeded[t] == 1) ? shift : 0);
        }
        else if (way == 6)
        {
            // All tasks of one setting within some days, at the time of one of them.
            var at = random.Next(count);
            var reach = 1 + random.Next(8 * Day);
            for (var t = 0; t < count; t++)
            {
                var isWith = facts.SetUp[t] != ScheduleFacts.None && facts.SetUp[t] == facts.SetUp[at] && Math.Abs(placement.Start[t] - placement.Start[at]) < reach;
                keys[t] = isWith ? placement.Start[at] : placement.Start[t];
            }
        }
        else if (way == 4)
        {
            // Those of one sort of hours stand back by up to three days: what has fewer hours goes first into them.
            var hours = random.Next(facts.Windows.Length);
            var back = random.Next(3 * Day);
            for (var t = 0; t < count; t++) keys[t] = placement.Start[t] + (facts.Hours[t] == hours ? back : 0);
        }
        else if (way == 3)
        {
            // Tasks of one setting, not far from each other, one after the other.
            var at = random.Next(count);
            var reach = 1 + random.Next(Math.Max(2, count / 4));
            for (var i = Math.Max(0, at - reach); i < Math.Min(count, at + reach); i++)
            {
                if (facts.SetUp[order[i]] == facts.SetUp[order[at]] && facts.SetUp[order[at]] != ScheduleFacts.None) keys[order[i]] = (at * 1000L) + (i - at);
            }
        }
        else
        {
            // A stretch of the order, mixed.
            var from = random.Next(count);
            var to = Math.Min(count, from + 2 + random.Next(Math.Max(2, count / 5)));
            for (var i = from; i < to; i++) keys[order[i]] = random.Next(from, to) * 1000L;
        }

        return keys;
    }
}
