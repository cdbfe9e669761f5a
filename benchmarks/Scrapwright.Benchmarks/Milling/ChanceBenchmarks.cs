using BenchmarkDotNet.Attributes;
using Scrapwright.Benchmarks.Planning;
using Scrapwright.Core.Plans;
using Scrapwright.Planning;

namespace Scrapwright.Benchmarks.Milling;

/// <summary>Chances of the example workshop's plan, which the client works out while strips are dragged; reading the steps, which comes once, as a yardstick beside.</summary>
[MemoryDiagnoser]
public class ChanceBenchmarks
{
    private PlanIndex index = null!;
    private PlanChances chances = null!;

    /// <summary>Plans the example workshop.</summary>
    [GlobalSetup]
    public async Task SetupAsync()
    {
        index = PlanIndex.Of(((PlanOutcome.Planned)await Planner.PlanAsync(Instances.Example, new PlanLimits { Seconds = 5 })).Plan);
        chances = new PlanChances(index);
        Console.WriteLine($"// {index.Plan.GlueUps.Length} glue-ups, {index.Plan.Boards.Length} boards, {index.Plan.Made.Length} gifts");
    }

    /// <summary>The yardstick.</summary>
    [Benchmark(Baseline = true)]
    public PlanChances ReadTheSteps() => new(index);

    /// <summary>One glue-up.</summary>
    [Benchmark]
    public double OneGlueUp() => chances.Of(index.Plan.GlueUps[0]).All;

    /// <summary>Every glue-up and every gift.</summary>
    [Benchmark]
    public double AllOfThePlan() => index.Plan.GlueUps.Sum(g => chances.Of(g).All) + index.Plan.Made.Sum(m => chances.OfGift(m.Gift).All);

    /// <summary>The weakest link of every gift.</summary>
    [Benchmark]
    public int WeakestLinks() => index.Plan.Made.Sum(m => chances.WeakestLink(m.Gift)?.ChancePerMille ?? 0);

    /// <summary>The plot of one glue-up.</summary>
    [Benchmark]
    public object? OneCurve() => chances.WeakerCurve(index.Plan.GlueUps[0]);
}
