using System.Collections.Immutable;

namespace Scrapwright.Planning.Search;

/// <summary>Gifts that need the same and are worth the same.</summary>
/// <param name="Size">How many.</param>
/// <param name="Weight">What making one is worth.</param>
/// <param name="Parts">Their panel parts.</param>
/// <param name="Runs">Their runs of solid parts: type and how many.</param>
internal sealed record GiftGroup(int Size, long Weight, ImmutableArray<GroupPart> Parts, ImmutableArray<(int Type, int Count)> Runs);
