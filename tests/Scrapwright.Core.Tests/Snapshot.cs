using System.Runtime.CompilerServices;

namespace Scrapwright.Core.Tests;

/// <summary>
/// Compares a text with <c>Snapshots/area/case.verified.ext</c> beside the tests. A difference writes <c>….received.ext</c> and fails;
/// with the environment variable SCRAPWRIGHT_ACCEPT=1 the text becomes the verified one.
/// </summary>
public static class Snapshot
{
    public static void Match(string area, string name, string extension, string text, [CallerFilePath] string caller = "")
    {
        var folder = Path.Combine(Path.GetDirectoryName(Root())!, "Snapshots", area);
        Compare(Path.Combine(folder, $"{name}.verified.{extension}"), Path.Combine(folder, $"{name}.received.{extension}"), text, caller);
    }

    /// <summary>The same for a file of the repository, its path from the root: a picture in the docs that must not age.</summary>
    public static void MatchFile(string path, string text, [CallerFilePath] string caller = "")
    {
        var verified = Path.Combine(Path.GetDirectoryName(Root())!, "..", "..", path);
        Compare(verified, Path.ChangeExtension(verified, ".received" + Path.GetExtension(path)), text, caller);
    }

    private static void Compare(string verified, string received, string text, string caller)
    {
        if (Environment.GetEnvironmentVariable("SCRAPWRIGHT_ACCEPT") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(verified)!);
            File.WriteAllText(verified, text);
            File.Delete(received);
            return;
        }

        Assert.True(File.Exists(verified), $"{verified} does not exist (asked for by {Path.GetFileName(caller)}). Maybe run with SCRAPWRIGHT_ACCEPT=1 and look at it.");
        if (File.ReadAllText(verified).ReplaceLineEndings("\n") == text)
        {
            File.Delete(received);
            return;
        }

        File.WriteAllText(received, text);
        Assert.Fail($"It differs from its snapshot: compare {received} with {verified}.");
    }

    private static string Root([CallerFilePath] string here = "") => here;
}
