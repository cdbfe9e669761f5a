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

    /// <summary>
    /// What is left of it when some gifts are taken out, and those that share a glue-up with them, but for what of them is glued or cut already; its values are not
    /// worked out.
    /// </summary>
    internal Placement Without(Problem problem, ImmutableArray<int> gifts)
    {
        var all = WithPartners(problem, gifts);
        return new(
            [.. Made.Select((made, gift) => made && !all.Contains(gift))],
            [.. Panels.Where(p => !all.Contains(problem.Panels[p].GiftIndex) || problem.Panels[p].Done is not null)],
            [.. Segments.Where(s => !all.Contains(s.GiftIn(problem)) || s.IsDoneIn(problem))],
            []);
    }

    /// <summary>Some gifts and those that share a glue-up with them that is not glued yet, in order.</summary>
    internal ImmutableArray<int> WithPartners(Problem problem, IEnumerable<int> gifts)
    {
        var all = gifts.ToHashSet();
        var shared = Panels.Select(p => problem.Panels[p]).Where(p => p.IsShared && p.Done is null).ToList();
        for (var before = -1; before != all.Count;)
        {
            before = all.Count;
            foreach (var share in shared.Where(p => p.Shares.Any(s => all.Contains(s.GiftIndex))).SelectMany(p => p.Shares))
            {
                all.Add(share.GiftIndex);
            }
        }

        return [.. all.Order()];
    }
}
