using System.Runtime.InteropServices;

namespace Scrapwright.Benchmarks.Cutting;

/// <summary>Published cutting instances: known optimum, ours, our bound, seconds. The instances are not part of the repository.</summary>
internal static class CuttingTable
{
    internal static int Run(string[] args)
    {
        var rest = args.ToList();
        var at = rest.IndexOf("--folder");
        var folder = at >= 0 && at + 1 < rest.Count ? rest[at + 1] : FindFolder();
        if (folder is null || !File.Exists(Path.Combine(folder, "optima-1d.csv")))
        {
            Console.Error.WriteLine($"Found no instances in {folder ?? "shared/reference/cutting beside the repository"}. Expected a folder with optima-1d.csv, 1d, optima-2d.csv and instances-2d.json: --folder FOLDER.");
            return 2;
        }

        if (at >= 0) rest.RemoveRange(at, 2);
        var what = rest.FirstOrDefault(a => a is "1d" or "2d");
        var name = rest.FirstOrDefault(a => a is not ("1d" or "2d")) ?? "";
        Console.WriteLine($"{RuntimeInformation.FrameworkDescription}, one thread, seconds of processor time, {DateTime.UtcNow:yyyy-MM-dd}");
        if (what is not "2d") BarTable.Run(folder, name);
        if (what is not "1d") BoardTableRows.Run(folder, name);
        return 0;
    }

    /// <summary>The folder shared/reference/cutting beside the repository, looked for upwards from here.</summary>
    private static string? FindFolder()
    {
        for (var at = new DirectoryInfo(Environment.CurrentDirectory); at is not null; at = at.Parent)
        {
            var folder = Path.Combine(at.FullName, "shared", "reference", "cutting");
            if (Directory.Exists(folder)) return folder;
        }

        return null;
    }
}
