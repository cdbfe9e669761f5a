namespace Scrapwright.Cli.Commands;

/// <summary>Folders that a command is going to write to.</summary>
internal static class OutFolder
{
    /// <summary>Makes the folder and writes a file there and removes it, so that nobody waits for a plan that cannot be kept.</summary>
    /// <exception cref="IOException">The folder cannot be written to.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written to.</exception>
    internal static void Try(string folder)
    {
        Directory.CreateDirectory(folder);
        var probe = Path.Combine(folder, $".scrapwright-{Guid.NewGuid():N}");
        File.WriteAllText(probe, "");
        File.Delete(probe);
    }

    /// <summary>Whether there is something at a place that is not an empty folder.</summary>
    internal static bool IsTaken(string path) => File.Exists(path) || (Directory.Exists(path) && Directory.EnumerateFileSystemEntries(path).Any());
}
