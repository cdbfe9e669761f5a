using System.Diagnostics;
using Scrapwright.Core.Calendar;
using Scrapwright.Planning;
using Scrapwright.Planning.Calendar;

namespace Scrapwright.Benchmarks.Scheduling;

/// <summary>The invented shop: what is placed at once and what the search makes of it.</summary>
internal static class ShopRows
{
    internal static async Task RunAsync(double? seconds, int workers, int seed, bool showsSteps, string only)
    {
        // Seconds of the example as of a shop of its size. Our own choice.
        if ("example".StartsWith(only, StringComparison.Ordinal)) await ExampleRows.RunAsync(seconds ?? 3, workers, seed, showsSteps ? new Steps() : null);
        foreach (var (gifts, days, limit) in new[] { (40, 90, 60.0), (40, 40, 60.0), (7, 30, 3.0), (7, 12, 3.0) })
        {
            if (!$"{gifts} gifts".StartsWith(only, StringComparison.Ordinal)) continue;
            var problem = InventedShop.Of(gifts, seed: 7, days);
            var clock = Stopwatch.StartNew();
            var built = ScheduleBuilder.Build(problem);
            Write($"{gifts} gifts, {problem.Tasks.Length} tasks, due within {days} days, built", built, clock.Elapsed);
            clock.Restart();
            Write($"{gifts} gifts, {problem.Tasks.Length} tasks, due within {days} days, searched", await Scheduler.SolveAsync(problem, new PlanLimits { Seconds = seconds ?? limit, Workers = workers, Seed = seed }, showsSteps ? new Steps() : null), clock.Elapsed);
        }
    }

    internal static void Write(string what, ScheduleOutcome outcome, TimeSpan elapsed, string more = "")
    {
        var text = outcome switch
        {
            ScheduleOutcome.Scheduled { Schedule: var schedule } => string.Join(", ", schedule.Levels.Select(l =>
                $"{l.Kind}{(l.Priority is { } p ? $" of priority {p}" : "")} {l.Value} (bound {l.Bound}, {(l.Value == 0 ? 0 : 100.0 * (l.Value - l.Bound) / l.Value):0.0} %)")),
            ScheduleOutcome.Impossible impossible => "impossible: " + string.Join("; ", impossible.Reasons.Select(r => $"{r.Where}: {r.Found}, expected {r.Expected}")),
            _ => "unfinished",
        };
        Console.WriteLine($"  {what}: {text}; {elapsed.TotalSeconds:0.00} s{more}");
    }

    private sealed class Steps : IProgress<ScheduleProgress>
    {
        public void Report(ScheduleProgress value)
        {
            Console.WriteLine($"    {value.Elapsed.TotalSeconds:0.0} s {value.Phase}: {string.Join(", ", value.Levels.Select(l => $"{l.Value} ({l.Bound})"))}");
        }
    }
}
