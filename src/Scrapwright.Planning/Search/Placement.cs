using System.Collections.Immutable;
using Scrapwright.Core.Plans;
using Scrapwright.Planning.Problems;

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
    ImmutableArray<(LevelKind Kind, long Value)> Values)
{
    /// <summary>The value of one level.</summary>
    internal long ValueOf(LevelKind kind) => Values.First(v => v.Kind == kind).Value;

    /// <summary>Nothing but what is glued or cut already; its values are not worked out.</summary>
    internal static Placement Done(Problem problem) => new([.. problem.Gifts.Select(_ => false)], [.. problem.DonePanels], problem.DoneSegments, []);

    /// <summary>What is left of it when some gifts are taken out, but for what of them is glued or cut already; its values are not worked out.</summary>
    internal Placement Without(Problem problem, ImmutableArray<int> gifts) => new(
        [.. Made.Select((made, gift) => made && !gifts.Contains(gift))],
        [.. Panels.Where(p => !gifts.Contains(problem.Panels[p].GiftIndex) || problem.Panels[p].Done is not null)],
        [.. Segments.Where(s => !gifts.Contains(s.GiftIn(problem)) || s.IsDoneIn(problem))],
        []);
}
