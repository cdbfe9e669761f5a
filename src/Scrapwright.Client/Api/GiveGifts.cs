using System.Collections.Immutable;

namespace Scrapwright.Client.Api;

/// <summary>Says that the gifts of an occasion are given.</summary>
/// <param name="On">When; null for the date the occasion stands on.</param>
/// <param name="Stay">Labels of gifts for it that were not given and stay on the list.</param>
public sealed record GiveGifts(DateOnly? On, ImmutableArray<string> Stay);
