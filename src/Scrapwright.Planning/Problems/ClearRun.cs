using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Problems;

/// <summary>A stretch of an offcut without defects; of an offcut that is cut already, one of its pieces.</summary>
/// <param name="From">Where it begins, from the marked end.</param>
/// <param name="To">Where it ends.</param>
internal sealed record ClearRun(Length From, Length To)
{
    internal Length Length => To - From;

    /// <summary>The lane it belongs to; −1 for every lane.</summary>
    internal int Lane { get; init; } = -1;

    /// <summary>Id of the piece it is already; null while it is not cut.</summary>
    internal string? Piece { get; init; }

    /// <summary>True when the search may use none of it: it is used up, or holds a defect.</summary>
    internal bool IsClosed { get; init; }

    /// <summary>True when it holds a defect.</summary>
    internal bool IsDefect { get; init; }
}
