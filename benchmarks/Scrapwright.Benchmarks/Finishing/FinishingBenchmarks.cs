using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Scrapwright.Benchmarks.Planning;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Planning;

namespace Scrapwright.Benchmarks.Finishing;

/// <summary>Glue, grits and finish of the example workshop's plan, one question each and all a plan uses up; deriving its designs, which the last begins with, as a yardstick beside.</summary>
[MemoryDiagnoser]
public class FinishingBenchmarks
{
    private PlanIndex index = null!;
    private GlueUp glueUp = null!;
    private Gift gift = null!;
    private Product product = null!;

    [GlobalSetup]
    public async Task SetupAsync()
    {
        var outcome = await Planner.PlanAsync(Instances.Example, new PlanLimits { Seconds = 5 });
        index = PlanIndex.Of(((PlanOutcome.Planned)outcome).Plan);
        glueUp = index.Plan.GlueUps.MaxBy(g => g.Strips.Length)!;
        gift = index.Gift(glueUp.Gift)!;
        product = index.Product(gift.Label)!;
        Console.WriteLine($"// {index.Plan.GlueUps.Length} glue-ups, the one asked about has {glueUp.Strips.Length} strips");
    }

    [Benchmark]
    public GlueUpAdvice GlueUpAdviceOfOne() => GlueUpAdvice.For(index, glueUp);

    [Benchmark]
    public GritSequence GritsOfTheShop() => SandingAdvice.GritsFor(index.Plan.Request.Shop, FinishTable.All[0]).Sequence;

    [Benchmark]
    public FinishAdvice FinishOfAGift() => FinishAdvice.For(index.Plan, gift, product);

    [Benchmark]
    public ImmutableArray<Consumable> UsedUpByThePlan() => Consumables.For(index.Plan, index.Designs);

    [Benchmark(Baseline = true)]
    public ImmutableArray<GiftDesign> DerivingTheDesigns() => index.Plan.Request.DeriveDesigns();
}
