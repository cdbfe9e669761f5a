using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

/// <summary>The whole grid of Table 4-2, and mistakes seen in public programs, which its printed cells must tell from the right formula.</summary>
public sealed class EquilibriumMoistureTableReferenceTests
{
    // Rounding the constants for °C and for °F separately costs this much at most.
    private const double BetweenConstants = 0.013;

    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Cells = ReferenceTable.Read("emc-table.csv");

    // [WoodHandbook] Table 4-2, 30 to 130 °F by 10 and 5 to 95 % by 5: computed by a separate program from eq. 4-5, with the constants for °C and for °F, to three decimals.
    [Fact]
    public void Every_cell_of_the_grid_is_met()
    {
        Assert.Equal(209, Cells.Count);
        foreach (var cell in Cells)
        {
            double ours = EquilibriumMoisture.Percent(Celsius(cell), cell.Number("humidity_percent")!.Value);
            Assert.Equal(cell.Number("equation_celsius")!.Value, ours, 0.0005);
            Assert.Equal(cell.Number("equation_fahrenheit")!.Value, ours, 0.0005 + BetweenConstants);
        }
    }

    // [WoodHandbook] Table 4-2: 10 cells read in print, 13 from memory. Half the last digit and what the constants cost; 70 °F with 85 % is a known exception, 17.9 for 17.95.
    [Fact]
    public void Every_printed_cell_is_met()
    {
        var printed = Cells.Where(cell => cell.Number("printed") is not null).ToArray();

        Assert.Equal(23, printed.Length);
        Assert.Equal(10, printed.Count(cell => cell["source"].EndsWith("printed", StringComparison.Ordinal)));
        Assert.All(printed, cell => Assert.Equal(cell.Number("printed")!.Value, Ours(cell), Tolerance(cell)));
    }

    [Fact]
    public void The_inverse_finds_every_cell_of_the_grid_again() => Assert.All(Cells, cell =>
        Assert.Equal(cell.Number("humidity_percent")!.Value, EquilibriumMoisture.RelativeHumidityPercent(Celsius(cell), Ours(cell)), 1e-8));

    // Each of these mistakes misses at least one printed cell, so the cells would show it here.
    [Theory]
    [InlineData("constants for °F with °C")]
    [InlineData("K1 with 0.0000453 for 0.0000935")]
    [InlineData("the second hydrate left out of the numerator")]
    [InlineData("the second hydrate left out of the denominator")]
    public void Known_mistakes_miss_the_printed_cells(string mistake) =>
        Assert.Contains(Cells.Where(cell => cell.Number("printed") is not null), cell =>
            Math.Abs(Mistaken(mistake, cell.Number("fahrenheit")!.Value, cell.Number("humidity_percent")!.Value / 100) - cell.Number("printed")!.Value) > Tolerance(cell));

    // And without a mistake the same program meets them all.
    [Fact]
    public void The_formula_for_degrees_Fahrenheit_meets_the_printed_cells() =>
        Assert.All(Cells.Where(cell => cell.Number("printed") is not null), cell =>
            Assert.Equal(cell.Number("printed")!.Value, Mistaken("", cell.Number("fahrenheit")!.Value, cell.Number("humidity_percent")!.Value / 100), Tolerance(cell)));

    private static double Ours(IReadOnlyDictionary<string, string> cell) => EquilibriumMoisture.Percent(Celsius(cell), cell.Number("humidity_percent")!.Value);

    private static double Celsius(IReadOnlyDictionary<string, string> cell) => (cell.Number("fahrenheit")!.Value - 32) / 1.8;

    private static double Tolerance(IReadOnlyDictionary<string, string> cell) =>
        cell is { } && cell["fahrenheit"] == "70" && cell["humidity_percent"] == "85" ? 0.1 : 0.05 + BetweenConstants;

    // [WoodHandbook] eq. 4-5 with its constants for °F, and what others made of it.
    private static double Mistaken(string mistake, double fahrenheit, double h)
    {
        double t = mistake == "constants for °F with °C" ? (fahrenheit - 32) / 1.8 : fahrenheit;
        double w = 330 + 0.452 * t + 0.00415 * t * t;
        double k = 0.791 + 0.000463 * t - 0.000000844 * t * t;
        double k1 = 6.34 + 0.000775 * t - (mistake.StartsWith("K1", StringComparison.Ordinal) ? 0.0000453 : 0.0000935) * t * t;
        double k2 = 1.09 + 0.0284 * t - 0.0000904 * t * t;
        double kh = k * h, second = k1 * k2 * kh * kh;
        double above = k1 * kh + (mistake.EndsWith("numerator", StringComparison.Ordinal) ? 0 : 2 * second);
        double below = 1 + k1 * kh + (mistake.EndsWith("denominator", StringComparison.Ordinal) ? 0 : second);
        return 1800 / w * (kh / (1 - kh) + above / below);
    }
}
