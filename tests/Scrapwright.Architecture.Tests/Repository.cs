using System.Text.RegularExpressions;

namespace Scrapwright.Architecture.Tests;

/// <summary>The source tree that these tests were built from.</summary>
internal static partial class Repository
{
    /// <summary>The folder with the solution.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Every C# file somebody wrote under a folder, by its path from the root with forward slashes.</summary>
    public static IEnumerable<string> SourceFiles(string folder) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Root, file).Replace('\\', '/'))
            .Where(file => !BuildFolder().IsMatch(file))
            .Order(StringComparer.Ordinal);

    public static string Text(string file) => File.ReadAllText(Path.Combine(Root, file));

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Scrapwright.slnx"))) return folder.FullName;
        }

        throw new InvalidOperationException("No folder above the tests holds Scrapwright.slnx. Maybe the tests were copied out of the source tree.");
    }

    [GeneratedRegex("/(bin|obj)/")]
    private static partial Regex BuildFolder();
}
