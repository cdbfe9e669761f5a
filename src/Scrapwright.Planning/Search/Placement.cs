using System.Collections.Immutable;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning.Search;

/// <summary>What the search decided: which gifts, which glue-ups, and where every strip comes from.</summary>
/// <param name="Made">By place of the gift.</param>
/// <param name="Panels">Places of the glue-ups that are made.</param>
/// <param name="Segments">Every length used.</param>
/// <param name="Values">The value of each level for this placement.</param>
internal sealed record Placement(
    ImmutableArray<bool> Made,
    ImmutableArray<int> Panels,
    ImmutableArray<Segment> Segments,
    ImmutableArray<(LevelKind Kind, long Value)> Values);
