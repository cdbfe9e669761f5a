namespace Scrapwright.Cli.Output;

/// <summary>
/// Files of one result. All are written beside their places first and moved there only when every one is whole, so that a failed command
/// leaves what was there before.
/// </summary>
internal sealed class NewFiles : IDisposable
{
    private readonly List<(string Draft, string Place)> files = [];

    /// <summary>Writes one file beside its place.</summary>
    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    internal void Add(string place, Action<Stream> write)
    {
        var draft = $"{place}.{Environment.ProcessId}.new";
        files.Add((draft, place));
        using var stream = File.Create(draft);
        write(stream);
    }

    /// <summary>Moves every file to its place.</summary>
    internal void Keep()
    {
        foreach (var (draft, place) in files) File.Move(draft, place, overwrite: true);
        files.Clear();
    }

    /// <summary>Removes what was not kept.</summary>
    public void Dispose()
    {
        foreach (var (draft, _) in files) File.Delete(draft);
        files.Clear();
    }
}
