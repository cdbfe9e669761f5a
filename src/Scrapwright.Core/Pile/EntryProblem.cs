using System.Collections.Immutable;

namespace Scrapwright.Core.Pile;

/// <summary>A stretch of an entry line that was not understood.</summary>
/// <param name="Column">Where, counted from 1; one past the line's end when something is missing.</param>
/// <param name="Found">What stands there; empty when something is missing.</param>
/// <param name="Expected">What would have been understood.</param>
/// <param name="Suggestions">Names of the species it may have meant, nearest first; each is understood when put in its place.</param>
public sealed record EntryProblem(int Column, string Found, string Expected, ImmutableArray<string> Suggestions)
{
    /// <summary>The whole sentence for a person.</summary>
    public string Message => EntryMessages.Sentence(this);

    /// <inheritdoc cref="Message"/>
    public override string ToString() => Message;
}
