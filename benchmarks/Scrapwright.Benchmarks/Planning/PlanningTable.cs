using System.Diagnostics;
using System.Runtime.InteropServices;
using Scrapwright.Core.Plans;
using Scrapwright.Planning;

namespace Scrapwright.Benchmarks.Planning;

/// <summary>What the planner reaches: value, bound and gap of every level, the first placement (greedy, no solver) beside it, time and memory.</summary>
internal static class PlanningTable
{
    private static readonly (string Name, Func<PlanRequest> Request, double Seconds)[] Rows =
    [
        ("example workshop", () => Instances.Example, 10),
        ("60 offcuts, 12 gifts", () => Instances.Large(60, 12), 10),
        ("200 offcuts, 40 gifts", () => Instances.Large(200, 40), 60),
        ("1000 offcuts, 150 gifts", () => Instances.Large(1000, 150), 180),
    ];

    internal static async Task<int> RunAsync(string[] args)
    {
        Console.WriteLine($"{RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} processors, {DateTime.UtcNow:yyyy-MM-dd}");
        Console.WriteLine();
        Console.WriteLine("| instance | level | greedy | ours | bound | gap | first plan s | seconds | peak MB |");
        Console.WriteLine("|---|---|---:|---:|---:|---:|---:|---:|---:|");
        foreach (var (name, request, seconds) in Rows.Where(row => args.Length == 0 || args.Any(a => row.Name.StartsWith(a, StringComparison.Ordinal))))
        {
            await RowAsync(name, request(), seconds);
        }

        return 0;
    }

    private static async Task RowAsync(string name, PlanRequest request, double seconds)
    {
        var clock = Stopwatch.StartNew();
        Plan? first = null;
        var firstAt = TimeSpan.Zero;
        var outcome = await Planner.PlanAsync(request, new PlanLimits { Seconds = seconds }, new Listener(report =>
        {
            if (first is null && report.Best is { } plan)
            {
                first = plan;
                firstAt = clock.Elapsed;
            }
        }));
        var took = clock.Elapsed;
        using var process = Process.GetCurrentProcess();
        if (outcome is not PlanOutcome.Planned { Plan: var best })
        {
            Console.WriteLine($"| {name} | {outcome.GetType().Name} |");
            return;
        }

        var before = best.Levels.Zip(first!.Levels);
        Console.WriteLine($"| {name} | gifts (count) | {first.Made.Length} | {best.Made.Length} | of {request.Gifts.Length} | | {firstAt.TotalSeconds:0.0} | {took.TotalSeconds:0.0} | {process.PeakWorkingSet64 / 1e6:0} |");
        foreach (var (level, greedy) in before)
        {
            Console.WriteLine($"| {name} | {level.Kind} | {greedy.Value} | {level.Value} | {level.Bound} | {level.GapPerMille / 10.0:0.0} % | | | |");
        }
    }

    private sealed class Listener(Action<PlanProgress> hear) : IProgress<PlanProgress>
    {
        public void Report(PlanProgress value) => hear(value);
    }
}
