using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar;

/// <summary>
/// The clamps of a rack as resources. There is one for each reach: all clamps that reach so far or farther. A gluing takes its clamps from the resource of its reach and from that
/// of every shorter one. Then no moment asks for more than there is just when every gluing can be given clamps that reach: what reaches farther does for less, so by Hall's theorem
/// it is enough that for every reach those who need it or more are together no more than the clamps that have it or more.
/// </summary>
internal sealed class ClampPool(Shop shop)
{
    private readonly (Length Reach, int Count)[] reaches =
    [
        .. shop.Clamps.Where(c => c.Count > 0).Select(c => c.Reach).Distinct().Order()
            .Select(reach => (reach, shop.Clamps.Where(c => c.Reach >= reach).Sum(c => c.Count))),
    ];

    /// <summary>The resources, shortest reach first.</summary>
    internal ImmutableArray<ScheduleResource> Resources => [.. reaches.Select(r => new ScheduleResource(Id(r.Reach), r.Count))];

    /// <summary>What a task takes; empty when it takes none.</summary>
    internal ImmutableArray<ScheduleNeed> Needs(TaskClamps? clamps) => clamps is null
        ? []
        : [.. reaches.Where(r => ClassOf(clamps.Reach) is { } reach && r.Reach <= reach).Select(r => new ScheduleNeed(Id(r.Reach), clamps.Count, clamps.HeldMinutes))];

    /// <summary>How many clamps reach so far.</summary>
    internal int Reaching(Length reach) => shop.Clamps.Where(c => c.Reach >= reach).Sum(c => c.Count);

    private Length? ClassOf(Length reach) => reaches.Where(r => r.Reach >= reach).Select(r => (Length?)r.Reach).FirstOrDefault();

    private string Id(Length reach) => $"clamps {reach.ToExactText(shop.Unit)}";
}
