namespace Scrapwright.Planning.Cutting;

/// <summary>The rectangles put together so far: place, worth and copies of each, and no two of the same copies where one is no larger.</summary>
internal sealed class BoardBuilds(int parts)
{
    private readonly Dictionary<ulong, int> newest = [];
    private readonly List<int> olderOfSame = [];
    private byte[] copies = new byte[1024 * parts];

    /// <summary>All of them.</summary>
    internal List<Row> Rows { get; } = [];

    /// <summary>How often each part is in a rectangle.</summary>
    internal ReadOnlySpan<byte> Copies(int build) => copies.AsSpan(build * parts, parts);

    /// <summary>Adds a rectangle unless one of the same parts fits into it; gives its index, or -1.</summary>
    internal int Add(Row row, ReadOnlySpan<byte> uses)
    {
        var hash = Hash(uses);
        var last = newest.GetValueOrDefault(hash, -1);
        for (var other = last; other >= 0; other = olderOfSame[other])
        {
            if (Rows[other].Along <= row.Along && Rows[other].Across <= row.Across && Copies(other).SequenceEqual(uses)) return -1;
        }

        var at = Rows.Count;
        if ((at + 1) * parts > copies.Length) Array.Resize(ref copies, copies.Length * 2);
        uses.CopyTo(copies.AsSpan(at * parts, parts));
        Rows.Add(row);
        olderOfSame.Add(last);
        newest[hash] = at;
        return at;
    }

    /// <summary>How a rectangle was put together.</summary>
    internal BoardBuild Build(int at, BoardSizes sizes)
    {
        var row = Rows[at];
        if (row.Second < 0) return new BoardBuild.One(sizes.Shapes[row.First]);
        var (first, second) = (Build(row.First, sizes), Build(row.Second, sizes));
        return row.IsEndToEnd ? new BoardBuild.EndToEnd(first, second) : new BoardBuild.SideBySide(first, second);
    }

    // FNV-1a with the 64-bit parameters; only speed depends on it.
    private static ulong Hash(ReadOnlySpan<byte> uses)
    {
        var hash = 14695981039346656037UL;
        foreach (var use in uses) hash = unchecked((hash ^ use) * 1099511628211UL);
        return hash;
    }

    /// <summary>One rectangle.</summary>
    /// <param name="Along">Its place along the grain.</param>
    /// <param name="Across">Its place across the grain.</param>
    /// <param name="Value">What its parts are worth, scaled.</param>
    /// <param name="Reduced">The same less the prices on copies.</param>
    /// <param name="First">Index of its first half, or of its shape when it is one part.</param>
    /// <param name="Second">Index of its second half, or -1.</param>
    /// <param name="IsEndToEnd">How the halves lie.</param>
    internal readonly record struct Row(int Along, int Across, long Value, long Reduced, int First, int Second, bool IsEndToEnd);
}
