using System.Collections.Immutable;

namespace Scrapwright.Storage;

/// <summary>What came of adding: all of it, or nothing.</summary>
/// <typeparam name="T">What is kept.</typeparam>
public abstract record AddOutcome<T>
{
    private AddOutcome()
    {
    }

    /// <summary>All were added.</summary>
    /// <param name="Rows">As kept, in the order given.</param>
    public sealed record Added(ImmutableArray<T> Rows) : AddOutcome<T>;

    /// <summary>None was added, because of these labels.</summary>
    /// <param name="Labels">Never empty.</param>
    public sealed record LabelsTaken(ImmutableArray<TakenLabel> Labels) : AddOutcome<T>;
}
