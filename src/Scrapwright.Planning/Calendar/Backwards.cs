using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar;

/// <summary>
/// Forward-backward improvement (Li and Willis, 1992; from memory): places all from the end backwards in the order of their ends, then forwards again in the order found. Only where time has no direction: no hours,
/// settings, dates, fixed or earliest starts, limits or things held.
/// </summary>
internal sealed class Backwards
{
    private readonly ScheduleFacts facts;
    private readonly ListPlacing placing;
    private readonly long[] keys;

    private Backwards(ScheduleFacts facts)
    {
        this.facts = facts;
        var problem = facts.Problem with { Links = [.. facts.Problem.Links.Select(l => l with { Before = l.After, After = l.Before })] };
        var mirrored = new ScheduleFacts(problem);
        placing = new ListPlacing(mirrored, new StartRanges(mirrored, mirrored.LatestEnd));
        keys = new long[facts.Count];
    }

    /// <summary>For a problem, or null where time has a direction.</summary>
    internal static Backwards? For(ScheduleFacts facts)
    {
        var problem = facts.Problem;
        var hasDirection = !problem.SetUps.IsEmpty || !problem.Before.IsEmpty || facts.Levels.Length > 1 || problem.Links.Any(l => l.MostMinutes is not null)
            || problem.Deliveries.Any(d => d.Last.Any(l => l.WaitMinutes > 0))
            || problem.Tasks.Any(t => t.Hours.Length > 0 || t.EarliestStart > 0 || t.FixedStart is not null || t.Needs.Any(n => n.HeldMinutes > 0));
        return hasDirection ? null : new Backwards(facts);
    }

    /// <summary>A placement that is no worse.</summary>
    /// <param name="placement">Where to begin.</param>
    /// <param name="forwards">Places in the usual direction.</param>
    internal PlacedTasks Improve(PlacedTasks placement, ListPlacing forwards)
    {
        for (var t = 0; t < facts.Count; t++) keys[t] = -(placement.Start[t] + facts.Minutes[t]);
        if (!placing.Run(keys)) return placement;
        for (var t = 0; t < facts.Count; t++) keys[t] = -(placing.Bench.Start[t] + facts.Minutes[t]);
        if (!forwards.Run(keys)) return placement;
        var next = PlacedTasks.Of(facts, forwards.Bench);
        return LevelValues.Compare(next.Values, placement.Values) <= 0 ? next : placement;
    }
}
