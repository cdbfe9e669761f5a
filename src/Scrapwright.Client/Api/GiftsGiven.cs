using System.Collections.Immutable;

namespace Scrapwright.Client.Api;

/// <summary>What was done when the gifts of an occasion were given; sent back, it is taken back.</summary>
/// <param name="Gifts">Ids of the gifts that left the list.</param>
/// <param name="Given">Ids of the rows of what was given.</param>
/// <param name="Before">The date of the occasion before.</param>
public sealed record GiftsGiven(ImmutableArray<long> Gifts, ImmutableArray<long> Given, DateOnly Before);
