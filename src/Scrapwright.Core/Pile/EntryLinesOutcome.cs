using System.Collections.Immutable;

namespace Scrapwright.Core.Pile;

/// <summary>What came of reading many entry lines. Every line that is not blank or a comment is in one of the two lists.</summary>
public abstract record EntryLinesOutcome
{
    private EntryLinesOutcome()
    {
    }

    /// <summary>The lines that were understood, in order.</summary>
    public required ImmutableArray<EntryLineRead> Lines { get; init; }

    /// <summary>Every line was understood.</summary>
    public sealed record AllUnderstood : EntryLinesOutcome
    {
        /// <summary>The offcuts, in order, each with its label.</summary>
        public IEnumerable<Offcut> Offcuts => Lines.Select(line => line.Outcome.Offcut);
    }

    /// <summary>Some lines were not understood.</summary>
    public sealed record SomeNotUnderstood : EntryLinesOutcome
    {
        /// <summary>The lines that were not, in order; at least one.</summary>
        public required ImmutableArray<EntryLineRefused> Refused { get; init; }
    }
}
