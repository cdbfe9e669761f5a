using BenchmarkDotNet.Attributes;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Benchmarks.Pile;

/// <summary>One line of the pile, read; a plain split and decimal parse beside it as a yardstick.</summary>
[MemoryDiagnoser]
public class EntryLineBenchmarks
{
    /// <summary>Lines named by what is special about them.</summary>
    public static IEnumerable<string> Lines =>
    [
        "walnut 14 3/8 x 2 1/8 x 7/8 x3, cupped 1/16, knot 4-5",
        "walnut 14x2x1",
        "wallnut 14 3/8 x 2 1/8 x 7/8",
        "C7: 510 x 42 x 22 mm cherry, quarter, planed; off the old gate",
    ];

    [Benchmark]
    [ArgumentsSource(nameof(Lines))]
    public EntryOutcome Parse(string line) => EntryLine.Parse(line, LengthUnit.Inch);

    [Benchmark(Baseline = true)]
    [ArgumentsSource(nameof(Lines))]
    public decimal SplitAndDecimal(string line)
    {
        decimal sum = 0;
        foreach (var word in line.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries))
        {
            if (decimal.TryParse(word, out var number))
            {
                sum += number;
            }
        }

        return sum;
    }
}
