using BenchmarkDotNet.Attributes;
using Scrapwright.Core.Measures;

namespace Scrapwright.Benchmarks.Measures;

/// <summary>Reading and writing a length; a plain decimal parse beside it as a yardstick.</summary>
[MemoryDiagnoser]
public class LengthBenchmarks
{
    private static readonly Length Size = Length.FromInches(115, 8);

    [Benchmark]
    public bool ParseFraction() => LengthParser.Parse("14 3/8 in", LengthUnit.Inch).IsOk;

    [Benchmark(Baseline = true)]
    public decimal ParseDecimal() => decimal.Parse("14.375");

    [Benchmark]
    public string WriteFraction() => Size.ToText(LengthStyle.Inches);
}
