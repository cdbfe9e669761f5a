using System.Diagnostics;
using System.Runtime.InteropServices;
using Scrapwright.Core.Calendar;
using Scrapwright.Planning;
using Scrapwright.Planning.Calendar;

namespace Scrapwright.Benchmarks.Scheduling;

/// <summary>Calendars: published scheduling instances with known optima, which are not part of the repository, and an invented shop.</summary>
internal static class SchedulingTable
{
    internal static async Task<int> RunAsync(string[] args)
    {
        var rest = args.ToList();
        var seconds = (double?)Number(rest, "--seconds");
        var every = (int?)Number(rest, "--every") ?? 1;
        var workers = (int?)Number(rest, "--workers") ?? 2;
        var seed = (int?)Number(rest, "--seed") ?? new PlanLimits().Seed;
        var folder = Word(rest, "--folder");
        var only = Word(rest, "--only") ?? "";
        var showsSteps = rest.Remove("--steps");
        Console.WriteLine($"{RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} processors, {workers} threads, {DateTime.UtcNow:yyyy-MM-dd}");
        foreach (var what in rest.Count == 0 ? ["j30", "j60", "j120", "shop"] : rest)
        {
            if (what == "shop")
            {
                await ShopRows.RunAsync(seconds, workers, seed, showsSteps, only);
                continue;
            }

            if (what is not ("j30" or "j60" or "j120"))
            {
                Console.Error.WriteLine($"Found '{what}', expected j30, j60, j120 or shop.");
                return 2;
            }

            folder ??= FindFolder();
            if (folder is null || !File.Exists(Path.Combine(folder, "tables", $"{what}-reference.csv")))
            {
                Console.Error.WriteLine($"Found no instances in {folder ?? "shared/reference/scheduling/psplib beside the repository"}. Expected a folder with {what} and tables/{what}-reference.csv: --folder FOLDER.");
                return 2;
            }

            await FamilyAsync(folder, what, seconds ?? what switch { "j120" => 20, _ => 10 }, every, only, workers);
        }

        return 0;
    }

    private static async Task FamilyAsync(string folder, string family, double seconds, int every, string only, int workers)
    {
        Console.WriteLine($"{family}: {seconds:0.#} s each, every {every}.");
        int run = 0, best = 0, optimal = 0, solved = 0, proven = 0;
        double gaps = 0, longest = 0;
        var whole = Stopwatch.StartNew();
        foreach (var row in References(folder, family).Where(r => r.File.StartsWith(only, StringComparison.Ordinal)).Where((_, i) => i % every == 0))
        {
            var clock = Stopwatch.StartNew();
            var outcome = await Scheduler.SolveAsync(PsplibFile.Read(Path.Combine(folder, family, row.File)), new PlanLimits { Seconds = seconds, Workers = workers });
            longest = Math.Max(longest, clock.Elapsed.TotalSeconds);
            var level = ((ScheduleOutcome.Scheduled)outcome).Schedule.Levels[0];
            run++;
            if (level.Value <= row.Best) best++;
            if (row.IsOptimal) optimal++;
            if (row.IsOptimal && level.Value == row.Best) solved++;
            if (level.IsProven) proven++;
            if ((row.IsOptimal && level.Value < row.Best) || level.Bound > row.Best) Console.WriteLine($"  {row.File}: {level.Value}, bound {level.Bound}, published {row.Best}: one of them is wrong");
            else if (level.Value > row.Best) Console.WriteLine($"  {row.File}: {level.Value}, bound {level.Bound}, best known {row.Best}");
            gaps += 100.0 * (level.Value - row.Best) / row.Best;
        }

        Console.WriteLine($"{family}: {run} run, {solved} of {optimal} with a published optimum solved to it, {best} as good as the best known, {proven} proven here, "
            + $"mean gap to best known {gaps / Math.Max(1, run):0.00} %, {whole.Elapsed.TotalSeconds / Math.Max(1, run):0.00} s each, longest {longest:0.0} s");
    }

    private static IEnumerable<(string File, int Best, bool IsOptimal)> References(string folder, string family) =>
        File.ReadLines(Path.Combine(folder, "tables", $"{family}-reference.csv")).Skip(1).Select(line => line.Split(','))
            .Where(cells => File.Exists(Path.Combine(folder, family, cells[0])))
            .Select(cells => (cells[0], int.Parse(cells[6]), cells[7] == "optimal"));

    private static double? Number(List<string> args, string name) => Word(args, name) is { } word ? double.Parse(word) : null;

    private static string? Word(List<string> args, string name)
    {
        var at = args.IndexOf(name);
        if (at < 0 || at + 1 >= args.Count) return null;
        var word = args[at + 1];
        args.RemoveRange(at, 2);
        return word;
    }

    /// <summary>The folder shared/reference/scheduling/psplib beside the repository, looked for upwards from here.</summary>
    private static string? FindFolder()
    {
        for (var at = new DirectoryInfo(Environment.CurrentDirectory); at is not null; at = at.Parent)
        {
            var folder = Path.Combine(at.FullName, "shared", "reference", "scheduling", "psplib");
            if (Directory.Exists(folder)) return folder;
        }

        return null;
    }
}
