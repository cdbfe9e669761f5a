using System.Diagnostics;
using System.Runtime.InteropServices;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Planning;

namespace Scrapwright.Benchmarks.Planning;

/// <summary>Planning again after one changed size: time to the first plan, how many strips stay, and how near it is to a plan searched for from nothing.</summary>
internal static class ReplanTable
{
    internal static async Task<int> RunAsync()
    {
        var request = Instances.Large(60, 12);
        var former = await PlanAsync(request, 10, null);
        Console.WriteLine($"{RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} processors, {DateTime.UtcNow:yyyy-MM-dd}");
        Console.WriteLine();
        Console.WriteLine("| changed | first plan s | no worse than 10 s from nothing after s | strips as before | gifts | wood, ours mm³ | wood, from nothing mm³ | bound mm³ | changes |");
        Console.WriteLine("|---|---:|---:|---:|---:|---:|---:|---:|---:|");
        var strip = former.Best.GlueUps[0].Strips[0].Offcut;
        foreach (var (name, change) in new (string, Func<Core.Pile.Offcut, Core.Pile.Offcut>)[]
        {
            ("nothing", o => o),
            ("one offcut 1/64 in thinner", o => o with { Thickness = o.Thickness - Length.FromInches(1, 64) }),
            ("one offcut 1/8 in narrower", o => o with { Width = o.Width - Length.FromInches(1, 8) }),
            ("one offcut useless", o => o with { Thickness = Length.FromInches(1, 8) }),
        })
        {
            var changed = request with { Pile = [.. request.Pile.Select(o => o.Label == strip ? change(o) : o)] };
            var anew = await PlanAsync(changed, 10, null);
            var again = await PlanAsync(changed, 10, former.Best);
            var reached = again.Found.FirstOrDefault(f => !IsWorse(f.Plan, anew.Best));
            var wood = again.Best.Levels.Single(l => l.Kind == LevelKind.WoodUsed);
            Console.WriteLine(
                $"| {name} | {again.Found[0].At.TotalSeconds:0.00} | {(reached.Plan is null ? "never" : $"{reached.At.TotalSeconds:0.00}")} | {again.Best.Levels.Single(l => l.Kind == LevelKind.StripsAsBefore).Value} of {again.Best.Before.Sum(s => s.Count)} "
                + $"| {again.Best.Made.Length} | {wood.Value} | {anew.Best.Levels.Single(l => l.Kind == LevelKind.WoodUsed).Value} | {wood.Bound} | {PlanChanges.Between(former.Best, again.Best).Length} |");
        }

        return 0;
    }

    private static bool IsWorse(Plan one, Plan other)
    {
        foreach (var kind in new[] { LevelKind.GiftsMade, LevelKind.Looks, LevelKind.WoodUsed, LevelKind.ClampLoads })
        {
            var (mine, theirs) = (one.Levels.Single(l => l.Kind == kind), other.Levels.Single(l => l.Kind == kind));
            if (mine.Value != theirs.Value) return mine.Maximise ? mine.Value < theirs.Value : mine.Value > theirs.Value;
        }

        return false;
    }

    private static async Task<(Plan Best, List<(TimeSpan At, Plan Plan)> Found)> PlanAsync(PlanRequest request, double seconds, Plan? former)
    {
        var clock = Stopwatch.StartNew();
        var found = new List<(TimeSpan, Plan)>();
        var outcome = await Planner.PlanAsync(request, new PlanLimits { Seconds = seconds }, former, new Listener(report =>
        {
            if (report.Best is { } plan) found.Add((clock.Elapsed, plan));
        }));
        return (((PlanOutcome.Planned)outcome).Plan, found);
    }

    private sealed class Listener(Action<PlanProgress> hear) : IProgress<PlanProgress>
    {
        public void Report(PlanProgress value) => hear(value);
    }
}
