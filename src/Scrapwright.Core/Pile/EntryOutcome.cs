using System.Collections.Immutable;

namespace Scrapwright.Core.Pile;

/// <summary>What came of reading one entry line.</summary>
public abstract record EntryOutcome
{
    private EntryOutcome()
    {
    }

    /// <summary>The whole line was understood.</summary>
    /// <param name="Offcut">What it says. Its label is empty when the line gives none: see <see cref="LabelMaker"/>.</param>
    /// <param name="Readings">What each stretch was taken for, in the order of the line.</param>
    /// <param name="Doubts">Sizes to be asked back because they are unlikely.</param>
    public sealed record Understood(Offcut Offcut, ImmutableArray<EntryReading> Readings, ImmutableArray<OffcutDoubt> Doubts) : EntryOutcome
    {
        /// <summary>The label that the line gives, or null.</summary>
        public string? Label => Offcut.Label.Length == 0 ? null : Offcut.Label;

        /// <summary>Whether the maker should look again: a doubt, or something guessed.</summary>
        public bool NeedsALook => Doubts.Length > 0 || Readings.Any(reading => reading.Guessed);
    }

    /// <summary>Something in the line was not understood.</summary>
    /// <param name="Problems">Each stretch that was not, in the order of the line; at least one.</param>
    /// <param name="Readings">What the other stretches were taken for.</param>
    public sealed record NotUnderstood(ImmutableArray<EntryProblem> Problems, ImmutableArray<EntryReading> Readings) : EntryOutcome;
}
