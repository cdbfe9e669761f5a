using BenchmarkDotNet.Running;
using Scrapwright.Benchmarks;
using Scrapwright.Benchmarks.Planning;

switch (args)
{
    case ["planning", .. var rest]:
        return await PlanningTable.RunAsync(rest);
    case ["start", .. var rest]:
        return await StartTable.RunAsync(rest);
    case []:
        Console.WriteLine("""
            benchmarks planning [example|large]   what the planner reaches, level by level, with the first placement beside it
            benchmarks start WEB.dll [RUNS]       start of the built web app to its first page
            benchmarks micro …                    entry line and lengths, by BenchmarkDotNet (options as there, for example --filter *)
            """);
        return 0;
    case ["micro", .. var rest]:
        BenchmarkSwitcher.FromAssembly(typeof(PlanningTable).Assembly).Run(rest);
        return 0;
    default:
        Console.Error.WriteLine($"Found '{string.Join(' ', args)}', expected planning, start or micro.");
        return 2;
}
