using System.Collections.Immutable;

namespace Scrapwright.Core.Plans;

/// <summary>A glue-up of one plan and the one that takes its place in another: of the same part, with most strips in common.</summary>
internal sealed record GlueUpMatch(GlueUp? Before, GlueUp? Now)
{
    /// <summary>Strips that are in it no more; empty when one of the two is missing.</summary>
    public ImmutableArray<Strip> Gone => Before is null || Now is null ? [] : Less(Before, Now);

    /// <summary>Strips that are new in it; empty when one of the two is missing.</summary>
    public ImmutableArray<Strip> Come => Before is null || Now is null ? [] : Less(Now, Before);

    /// <summary>Every glue-up of both plans, in the order of the plan now, then those that are gone.</summary>
    public static ImmutableArray<GlueUpMatch> Of(Plan former, Plan plan) => Of(former.GlueUps, plan.GlueUps);

    /// <summary>The same for lists of glue-ups.</summary>
    public static ImmutableArray<GlueUpMatch> Of(ImmutableArray<GlueUp> former, ImmutableArray<GlueUp> plan)
    {
        var pairs =
            from before in former.Index()
            from now in plan.Index()
            where before.Item.Gift == now.Item.Gift && before.Item.Part == now.Item.Part
            let shared = before.Item.Strips.Length - Less(before.Item, now.Item).Length
            orderby shared descending, before.Item.Id == now.Item.Id descending, now.Index, before.Index
            select (before, now);
        var partner = new GlueUp?[plan.Length];
        var taken = new HashSet<int>();
        foreach (var (before, now) in pairs.ToList())
        {
            if (partner[now.Index] is null && taken.Add(before.Index)) partner[now.Index] = before.Item;
        }

        return
        [
            .. plan.Select((now, i) => new GlueUpMatch(partner[i], now)),
            .. former.Where((_, i) => !taken.Contains(i)).Select(before => new GlueUpMatch(before, null)),
        ];
    }

    private static ImmutableArray<Strip> Less(GlueUp one, GlueUp other)
    {
        var left = other.Strips.Select(s => (s.Offcut, s.RoughWidth)).ToList();
        return [.. one.Strips.Where(s => !left.Remove((s.Offcut, s.RoughWidth)))];
    }
}
