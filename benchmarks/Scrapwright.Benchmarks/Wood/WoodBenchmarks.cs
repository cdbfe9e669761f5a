using BenchmarkDotNet.Attributes;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Benchmarks.Wood;

/// <summary>The science of wood, one answer each; one exponential beside them as a yardstick.</summary>
[MemoryDiagnoser]
public class WoodBenchmarks
{
    private static readonly Species Walnut = SpeciesTable.Get("black-walnut");
    private static readonly Climate Home = ClimateTable.Find(ClimateTable.DefaultKey)!;
    private static readonly Length Width = Length.FromInches(4);
    private static readonly Volume Board = Volume.Of(Length.FromInches(14), Length.FromInches(2), Length.FromInches(7, 8));
    private double widthMm = 101.6;

    [Benchmark(Baseline = true)]
    public double OneExponential() => Math.Exp(-widthMm);

    [Benchmark]
    public double EquilibriumOfAMonth() => EquilibriumMoisture.Percent(20, widthMm - 50);

    [Benchmark]
    public double HumidityOfAMoisture() => EquilibriumMoisture.RelativeHumidityPercent(20, 9);

    [Benchmark]
    public double DriestMonthOfAYear() => Home.DriestPercent;

    [Benchmark]
    public Length? MovementByCoefficient() => MoistureMovement.WidthChange(Walnut, RingOrientation.Rift, Width, 8, 12)?.Change;

    [Benchmark]
    public Length? MovementByShrinkage() => MoistureMovement.WidthChange(Walnut, RingOrientation.Rift, Width, 16, 8)?.Change;

    [Benchmark]
    public CupTendency? CupOfAStrip() => Cupping.Estimate(Walnut, RingOrientation.Flat, Width, 12, 8);

    [Benchmark]
    public double DaysToSettle() => Acclimatisation.DaysEstimate(Walnut, Width).Days;

    [Benchmark]
    public double MassOfABoard() => WoodMass.GramsOf(Walnut, Board, 8);

    [Benchmark]
    public WoodFacts FactsOnOnePage() => WoodFacts.For(Walnut);
}
