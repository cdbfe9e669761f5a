using System.Collections.Immutable;

namespace Scrapwright.Core.Plans;

/// <summary>What a plan has in common with the one before it: the last level of a plan that was made from another.</summary>
public static class FormerStrips
{
    /// <summary>The strips of a plan, alike ones counted, in its order.</summary>
    public static ImmutableArray<FormerStrip> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Of(plan.GlueUps, plan.Boards);
    }

    /// <summary>How many of the strips there were are there still, used for the same.</summary>
    /// <param name="before">The strips there were.</param>
    /// <param name="glueUps">The glue-ups now.</param>
    /// <param name="boards">The boards now.</param>
    public static long CountKept(ImmutableArray<FormerStrip> before, ImmutableArray<GlueUp> glueUps, ImmutableArray<BoardRun> boards)
    {
        var now = Of(glueUps, boards).ToDictionary(s => s with { Count = 1 }, s => s.Count);
        return before.GroupBy(s => s with { Count = 1 }).Sum(g => Math.Min(g.Sum(s => (long)s.Count), now.GetValueOrDefault(g.Key)));
    }

    private static ImmutableArray<FormerStrip> Of(ImmutableArray<GlueUp> glueUps, ImmutableArray<BoardRun> boards) =>
    [
        .. glueUps.SelectMany(g => g.Strips.Select(s => (g.Gift, g.Part, s.Offcut, s.RoughWidth)))
            .Concat(boards.Select(b => (b.Gift, Part: "", b.Offcut, b.RoughWidth)))
            .CountBy(s => s).Select(s => new FormerStrip(s.Key.Gift, s.Key.Part, s.Key.Offcut, s.Key.RoughWidth, s.Value)),
    ];
}
