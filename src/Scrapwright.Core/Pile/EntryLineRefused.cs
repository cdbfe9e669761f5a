using System.Collections.Immutable;

namespace Scrapwright.Core.Pile;

/// <summary>One of many entry lines, not understood.</summary>
/// <param name="Line">Its number in the text, from 1.</param>
/// <param name="Text">The line as it was, so that nothing is lost.</param>
/// <param name="Problems">Each stretch that was not understood; at least one.</param>
public sealed record EntryLineRefused(int Line, string Text, ImmutableArray<EntryProblem> Problems);
