using Google.OrTools.Sat;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning.Search;

/// <content>What the maker decided, and the plan before.</content>
internal sealed partial class PlanModel
{
    /// <summary>What is glued and cut already adds to a level.</summary>
    private long DoneValue(LevelKind kind) => kind switch
    {
        LevelKind.WoodUsed => problem.DoneSegments.Sum(s => PlacementValues.Wood(problem, s)),
        LevelKind.ClampLoads => problem.DonePanels.Count() + PlacementValues.BoardsGlued(problem, problem.DoneSegments),
        _ => 0,
    };

    /// <summary>A gift that is made has a strip of each offcut that is pinned to it.</summary>
    private void PinsAreKept()
    {
        foreach (var pin in problem.Pins.Where(p => scope.Gifts.Contains(p.GiftIndex)))
        {
            var pinned = FreePanels.Where(p => p.IsFor(pin.GiftIndex, pin.Part))
                .SelectMany(p => byPanel[p.Index]).Where(s => problem.IsOf(pin, s.Segment));
            model.Add(LinearExpr.Sum(pinned.Select(s => s.Count)) >= Made(pin.GiftIndex));
        }
    }

    /// <summary>For strips alike in use, offcut and width, how many are there of those there were.</summary>
    private IEnumerable<IntVar> StripsKept()
    {
        if (problem.Before.IsEmpty)
        {
            yield break;
        }

        var wanted = StripsAsBefore.Wanted(problem);
        var done = problem.DoneSegments.CountBy(s => StripsAsBefore.KeyOf(problem, s)).ToDictionary();
        var labels = scope.Gifts.Select(g => problem.Gifts[g].Gift.Label).ToHashSet(StringComparer.Ordinal);
        var now = segments.ToLookup(s => StripsAsBefore.KeyOf(problem, s.Segment));
        foreach (var (key, count) in wanted.Where(w => labels.Contains(w.Key.Gift)))
        {
            var already = done.GetValueOrDefault(key);
            var counts = now[key].Select(s => s.Count).ToList();
            var kept = Follows(model.NewIntVar(0, count, ""), h => Math.Min(count, already + counts.Sum(c => h[c])));
            model.Add(LinearExpr.Sum(counts) + already >= kept);
            yield return kept;
        }
    }
}
