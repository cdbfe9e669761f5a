using System.Diagnostics;
using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar;

/// <summary>How many deliveries go through the shop together: begins with every number of equal waves, then moves the borders between waves.</summary>
internal sealed class WaveSearch(ScheduleFacts facts, StartRanges ranges, ListPlacing placing)
{
    private readonly DeliveryWaves waves = new(facts, PriorityRules.LateByDue(facts, ranges, PriorityRules.Tails(facts)));

    /// <summary>The best found; the first one when nothing is better.</summary>
    /// <param name="first">Where to begin.</param>
    /// <param name="seconds">Longest time.</param>
    /// <param name="passes">Most orders tried.</param>
    /// <param name="cancellationToken">Ends it.</param>
    internal PlacedTasks Run(PlacedTasks first, double seconds, int passes, CancellationToken cancellationToken)
    {
        var clock = Stopwatch.StartNew();
        var deliveries = facts.Deliveries.Length;
        if (facts.SetUps.Length == 0 || deliveries < 2) return first;
        PlacedTasks? best = null;
        var borders = new bool[deliveries + 1];
        for (var size = 1; size <= deliveries && MayGoOn(); size++)
        {
            var some = new bool[deliveries + 1];
            for (var i = size; i <= deliveries; i += size) some[i] = true;
            Try(some);
        }

        for (var improved = true; improved && MayGoOn();)
        {
            improved = false;
            for (var i = 1; i <= deliveries && MayGoOn(); i++)
            {
                improved |= Try(With(i, i));
                if (i > 1 && borders[i] != borders[i - 1]) improved |= Try(With(i, i - 1));
            }
        }

        return best is not null && LevelValues.Compare(best.Values, first.Values) < 0 ? best : first;

        bool MayGoOn() => passes > 0 && clock.Elapsed.TotalSeconds < seconds && !cancellationToken.IsCancellationRequested;

        bool[] With(int one, int other)
        {
            var changed = (bool[])borders.Clone();
            changed[one] = !changed[one];
            if (other != one) changed[other] = !changed[other];
            return changed;
        }

        bool Try(bool[] some)
        {
            passes--;
            if (!placing.Run(waves.Keys(Numbered(some)))) return false;
            var next = PlacedTasks.Of(facts, placing.Bench);
            if (best is not null && LevelValues.Compare(next.Values, best.Values) >= 0) return false;
            (best, borders) = (next, some);
            return true;
        }
    }

    private static Func<int, int> Numbered(bool[] borders)
    {
        var wave = new int[borders.Length];
        for (var i = 1; i < wave.Length; i++) wave[i] = wave[i - 1] + (borders[i] ? 1 : 0);
        return place => wave[place];
    }
}
