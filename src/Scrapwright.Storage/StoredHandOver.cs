using System.Collections.Immutable;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Storage;

/// <summary>What came of saying that the gifts of an occasion are given, with all that takes it back.</summary>
/// <param name="Outcome">What came of it; only when it is <see cref="HandOver.Done"/> was anything changed.</param>
/// <param name="Gifts">Ids of the gifts that left the list.</param>
/// <param name="Given">The rows of what was given.</param>
/// <param name="Before">The date of the occasion before.</param>
public sealed record StoredHandOver(HandOver Outcome, ImmutableArray<long> Gifts, ImmutableArray<StoredGiven> Given, DateOnly Before);
