using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Scrapwright.Benchmarks.Planning;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Fits;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;
using Scrapwright.Planning;

namespace Scrapwright.Benchmarks.Fits;

/// <summary>A year's fits, panels, joints and weights of the example workshop's plan with five strips and more in every set of squares; its designs derived, which all of them begin with, as a yardstick beside.</summary>
[MemoryDiagnoser]
public class FitBenchmarks
{
    private Plan plan = null!;
    private FitTrial trial = null!;

    [GlobalSetup]
    public async Task SetupAsync()
    {
        var example = Instances.Example;
        var wider = example with { Gifts = [.. example.Gifts.Select(g => g.Design == "striped-squares" ? g with { Options = g.Options.SetItem("strips", "5") } : g)] };
        var outcome = await Planner.PlanAsync(wider, new PlanLimits { Seconds = 5 });
        plan = ((PlanOutcome.Planned)outcome).Plan;
        var strips = plan.GlueUps.Sum(g => g.Strips.Length);
        Console.WriteLine($"// {strips} strips in {plan.GlueUps.Length} glue-ups, {PlanFits.Of(plan).Length} fits");
        if (strips < 40) throw new InvalidOperationException($"The plan has {strips} strips, 40 are wanted.");
        trial = new()
        {
            Holder = [new("", RingOrientation.Unknown, GrainDirection.Along, Length.FromMillimetres(302))],
            Held = [.. Enumerable.Repeat(new MovingWood("sugar-maple", RingOrientation.Unknown, GrainDirection.Width, Length.FromMillimetres(60)), 5)],
            FittedIn = ShopClimates.Find(plan.Request.Shop, "")!,
            LivesIn = ClimateTable.Find(ClimateTable.DefaultKey)!,
            Least = Length.FromMicrometres(400),
            Most = Length.FromMillimetres(4),
        };
    }

    [Benchmark]
    public (ImmutableArray<PlanFit> Fits, ImmutableArray<PanelMovement> Panels) FitsAndPanels() => (PlanFits.Of(plan), PanelMovement.Of(plan));

    [Benchmark]
    public object Everything() =>
        (PlanFits.Of(plan), PanelMovement.Of(plan), CrossGrain.Of(plan), GiftWeights.Of(plan), PileMoisture.Of(plan));

    [Benchmark]
    public SeasonFit OneTrial() => SeasonFit.Between(trial);

    [Benchmark(Baseline = true)]
    public ImmutableArray<GiftDesign> DerivingTheDesigns() => plan.Request.DeriveDesigns();
}
