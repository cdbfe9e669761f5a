using System.Collections.Immutable;

namespace Scrapwright.Planning.Search;

/// <summary>A panel part of the gifts of a group.</summary>
/// <param name="Types">Type of glue-up of each mode.</param>
/// <param name="Ways">For each way to get its blanks, how many glue-ups of each mode.</param>
internal sealed record GroupPart(ImmutableArray<int> Types, ImmutableArray<ImmutableArray<int>> Ways);
