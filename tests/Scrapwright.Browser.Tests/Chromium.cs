namespace Scrapwright.Browser.Tests;

/// <summary>The browser that the tests drive: the one that CHROMIUM names, else one found on the path.</summary>
internal static class Chromium
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome"];

    public static string Path { get; } = Find();

    public static IReadOnlyList<string> Arguments { get; } =
    [
        "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
    ];

    private static string Find() =>
        Environment.GetEnvironmentVariable("CHROMIUM")
        ?? (Environment.GetEnvironmentVariable("PATH") ?? "").Split(System.IO.Path.PathSeparator)
            .SelectMany(folder => Names.Select(name => System.IO.Path.Combine(folder, name)))
            .FirstOrDefault(File.Exists)
        ?? throw new InvalidOperationException("No browser found. Maybe set CHROMIUM to the path of a Chromium.");
}
