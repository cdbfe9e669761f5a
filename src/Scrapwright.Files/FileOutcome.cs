using System.Collections.Immutable;

namespace Scrapwright.Files;

/// <summary>What came of reading a file or a folder: all of it, or nothing and every problem.</summary>
/// <typeparam name="T">What the file holds.</typeparam>
public abstract record FileOutcome<T>
{
    private FileOutcome()
    {
    }

    /// <summary>Everything was read.</summary>
    /// <param name="Content">What the file holds.</param>
    /// <param name="Doubts">What to ask the maker about.</param>
    public sealed record Read(T Content, ImmutableArray<FileDoubt> Doubts) : FileOutcome<T>;

    /// <summary>Nothing was taken from it.</summary>
    /// <param name="Problems">The problems in order, at most 50 a file; at least one.</param>
    /// <param name="More">How many more there are.</param>
    public sealed record Refused(ImmutableArray<FileProblem> Problems, int More) : FileOutcome<T>;
}
