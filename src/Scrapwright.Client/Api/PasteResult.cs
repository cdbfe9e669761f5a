using System.Collections.Immutable;

namespace Scrapwright.Client.Api;

/// <summary>What came of a paste.</summary>
/// <param name="Added">The offcuts added, in the order of the lines.</param>
/// <param name="NotUnderstood">The lines that were not, in order; nothing of them was added.</param>
public sealed record PasteResult(ImmutableArray<OffcutRow> Added, ImmutableArray<LineProblem> NotUnderstood);
