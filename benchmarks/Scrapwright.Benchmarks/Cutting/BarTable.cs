using System.Globalization;
using Scrapwright.Core.Measures;
using Scrapwright.Planning.Cutting;

namespace Scrapwright.Benchmarks.Cutting;

/// <summary>One-dimensional instances: each row, then a summary by family.</summary>
internal static class BarTable
{
    internal static void Run(string folder, string name)
    {
        Console.WriteLine();
        Console.WriteLine("| instance | family | optimum | ours | bound | seconds |");
        Console.WriteLine("|---|---|---:|---:|---:|---:|");
        var missing = 0;
        var rows = new List<(string Family, bool IsSolved, double Seconds)>();
        foreach (var line in File.ReadLines(Path.Combine(folder, "optima-1d.csv")).Skip(1))
        {
            var cells = line.Split(',');
            if (!cells[0].Contains(name, StringComparison.OrdinalIgnoreCase)) continue;
            var file = Path.Combine(folder, "1d", cells[0]);
            if (!File.Exists(file))
            {
                missing++;
                continue;
            }

            var problem = Read(file);
            var optimum = int.Parse(cells[4], CultureInfo.InvariantCulture);
            var before = Environment.CpuUsage.TotalTime;
            var outcome = BarSolver.Solve(problem, new BarLimits());
            var seconds = (Environment.CpuUsage.TotalTime - before).TotalSeconds;
            var (ours, bound) = outcome is BarOutcome.Cut cut ? (cut.Cost, cut.Bound) : (-1, -1);
            rows.Add((cells[1], ours == optimum && bound == optimum, seconds));
            Console.WriteLine(FormattableString.Invariant($"| {cells[0].Replace(".txt", "", StringComparison.Ordinal)} | {cells[1]} | {optimum} | {ours} | {bound} | {seconds:0.00} |{(rows[^1].IsSolved ? "" : " not proven |")}"));
        }

        Console.WriteLine();
        Console.WriteLine("| family | instances | solved to proven optimum | mean s | max s |");
        Console.WriteLine("|---|---:|---:|---:|---:|");
        foreach (var family in rows.GroupBy(r => r.Family))
        {
            Console.WriteLine(FormattableString.Invariant($"| {family.Key} | {family.Count()} | {family.Count(r => r.IsSolved)} | {family.Average(r => r.Seconds):0.00} | {family.Max(r => r.Seconds):0.00} |"));
        }

        if (missing > 0) Console.WriteLine($"\n{missing} instances of the list are not in the folder.");
    }

    /// <summary>Number of pieces, room of a bar, then one size in a line; a size is a millimetre here.</summary>
    private static BarProblem Read(string file)
    {
        var numbers = File.ReadAllText(file).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(t => int.Parse(t, CultureInfo.InvariantCulture)).ToArray();
        return new BarProblem(
            [.. numbers[2..].GroupBy(n => n).Select(g => new BarItem(Length.FromMillimetres(g.Key), g.Count()))],
            [new BarStock(Length.FromMillimetres(numbers[1]), 1)],
            Length.Zero);
    }
}
