using System.Runtime.CompilerServices;

namespace Scrapwright.Cli.Tests;

/// <summary>
/// Compares a text with <c>Snapshots/area/case.verified.txt</c> beside the tests. A difference writes <c>….received.txt</c> and fails;
/// with the environment variable SCRAPWRIGHT_ACCEPT=1 the text becomes the verified one.
/// </summary>
internal static class Snapshot
{
    public static void Match(string area, string name, string text)
    {
        var folder = Path.Combine(Path.GetDirectoryName(Here())!, "Snapshots", area);
        var verified = Path.Combine(folder, $"{name}.verified.txt");
        var received = Path.Combine(folder, $"{name}.received.txt");
        if (Environment.GetEnvironmentVariable("SCRAPWRIGHT_ACCEPT") == "1")
        {
            Directory.CreateDirectory(folder);
            File.WriteAllText(verified, text);
            File.Delete(received);
            return;
        }

        Assert.True(File.Exists(verified), $"{verified} does not exist. Maybe run with SCRAPWRIGHT_ACCEPT=1 and look at it.");
        if (File.ReadAllText(verified).ReplaceLineEndings("\n") == text)
        {
            File.Delete(received);
            return;
        }

        File.WriteAllText(received, text);
        Assert.Fail($"{name} differs from its snapshot: compare {received} with {verified}.");
    }

    private static string Here([CallerFilePath] string here = "") => here;
}
