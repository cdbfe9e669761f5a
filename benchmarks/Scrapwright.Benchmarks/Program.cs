using BenchmarkDotNet.Running;
using Scrapwright.Benchmarks;
using Scrapwright.Benchmarks.Cutting;
using Scrapwright.Benchmarks.Planning;
using Scrapwright.Benchmarks.Scheduling;

switch (args)
{
    case ["planning", .. var rest]:
        return await PlanningTable.RunAsync(rest);
    case ["cutting", .. var rest]:
        return CuttingTable.Run(rest);
    case ["scheduling", .. var rest]:
        return await SchedulingTable.RunAsync(rest);
    case ["baselines", .. var rest]:
        return await BaselineTable.RunAsync(rest);
    case ["growth", .. var rest]:
        return await GrowthTable.RunAsync(rest);
    case ["replan"]:
        return await ReplanTable.RunAsync();
    case ["start", .. var rest]:
        return await StartTable.RunAsync(rest);
    case []:
        Console.WriteLine("""
            benchmarks planning [example|large]   what the planner reaches, level by level, with the first placement beside it
            benchmarks cutting [1d|2d] [NAME] [--folder FOLDER]   published cutting instances with known optima: ours, bound, seconds
            benchmarks scheduling [j30|j60|j120|shop] [--seconds N] [--every K] [--only NAME] [--workers N] [--seed N] [--steps] [--folder FOLDER]   published scheduling instances with best known values, and an invented shop
            benchmarks baselines [PILES]          gifts and wood beside a careful maker's and the first placement's
            benchmarks growth [OFFCUTS]           how time grows from 25 to 1,000 offcuts
            benchmarks replan                     planning again after one changed size, 60 offcuts
            benchmarks start WEB.dll [RUNS]       start of the built web app to its first page
            benchmarks micro …                    entry line and lengths, by BenchmarkDotNet (options as there, for example --filter *)
            """);
        return 0;
    case ["micro", .. var rest]:
        BenchmarkSwitcher.FromAssembly(typeof(PlanningTable).Assembly).Run(rest);
        return 0;
    default:
        Console.Error.WriteLine($"Found '{string.Join(' ', args)}', expected planning, replan, cutting, scheduling, baselines, growth, start or micro.");
        return 2;
}
