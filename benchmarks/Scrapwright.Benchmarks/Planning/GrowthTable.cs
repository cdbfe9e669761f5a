using System.Diagnostics;
using System.Globalization;
using Scrapwright.Core.Plans;
using Scrapwright.Planning;

namespace Scrapwright.Benchmarks.Planning;

/// <summary>How time grows with the pile: seconds to the first plan, to all gifts proven, and to wood within ten and five per cent of its bound.</summary>
internal static class GrowthTable
{
    private static readonly (int Offcuts, int Gifts, double Seconds)[] Rows = [(25, 4, 10), (50, 8, 10), (100, 15, 30), (200, 30, 60), (500, 75, 120), (1000, 150, 180)];

    internal static async Task<int> RunAsync(string[] args)
    {
        Console.WriteLine("| offcuts | gifts | first plan s | gifts proven s | wood within 10 % s | within 5 % s | gap at the end | limit s | peak MB |");
        Console.WriteLine("|---:|---:|---:|---:|---:|---:|---:|---:|---:|");
        foreach (var (offcuts, gifts, seconds) in Rows.Where(r => args.Length == 0 || args.Contains($"{r.Offcuts}")))
        {
            var watch = new Watch();
            var outcome = await Planner.PlanAsync(Instances.Large(offcuts, gifts), new PlanLimits { Seconds = seconds }, watch);
            using var process = Process.GetCurrentProcess();
            var gap = outcome is PlanOutcome.Planned { Plan: var plan } ? plan.Levels.Single(l => l.Kind == LevelKind.WoodUsed).GapPerMille / 10.0 : double.NaN;
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"| {offcuts} | {gifts} | {watch.First:0.0} | {watch.Proven:0.0} | {watch.WithinTen:0.0} | {watch.WithinFive:0.0} | {gap:0.0} % | {seconds:0} | {process.PeakWorkingSet64 / 1e6:0} |"));
        }

        return 0;
    }

    private sealed class Watch : IProgress<PlanProgress>
    {
        internal double? First { get; private set; }

        internal double? Proven { get; private set; }

        internal double? WithinTen { get; private set; }

        internal double? WithinFive { get; private set; }

        public void Report(PlanProgress value)
        {
            var at = value.Elapsed.TotalSeconds;
            var wood = value.Levels.Single(l => l.Kind == LevelKind.WoodUsed);
            First ??= at;
            Proven ??= value.Levels.Single(l => l.Kind == LevelKind.GiftsMade).IsProven ? at : null;
            WithinTen ??= wood.GapPerMille <= 100 ? at : null;
            WithinFive ??= wood.GapPerMille <= 50 ? at : null;
        }
    }
}
