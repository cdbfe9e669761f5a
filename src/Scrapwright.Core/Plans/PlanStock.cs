using System.Collections.Immutable;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans;

/// <summary>The wood a plan works: the single offcuts of its pile, and the boards glued face to face from two of them.</summary>
public static class PlanStock
{
    /// <summary>Every single offcut in the pile's order, then every board of the plan as an offcut of its own; a board whose offcuts are not in the pile is left out.</summary>
    public static ImmutableArray<Offcut> Stock(this Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<Offcut> pile = [.. plan.Request.Pile.SelectMany(o => o.Pieces())];
        if (plan.Faced.IsEmpty) return pile;
        var singles = ByLabel(plan.Request);
        return [.. pile, .. plan.Faced.Select(f => FaceGluing.Find(f.Label, singles, plan.Request.Shop)?.Board).OfType<Offcut>()];
    }

    /// <summary>The single offcut of that label, or the board that a label with a plus sign names; null when its wood is not in the pile.</summary>
    /// <param name="singles">The single offcuts of the pile by label.</param>
    /// <param name="label">A label.</param>
    /// <param name="shop">The shop.</param>
    public static Offcut? FindWood(this IReadOnlyDictionary<string, Offcut> singles, string label, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(singles);
        return singles.TryGetValue(label, out var offcut) ? offcut : FaceGluing.Find(label, singles, shop)?.Board;
    }

    /// <summary>The single offcuts of a request's pile by label; of equal labels the first counts.</summary>
    public static IReadOnlyDictionary<string, Offcut> ByLabel(PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return request.Pile.SelectMany(o => o.Pieces()).DistinctBy(o => o.Label).ToDictionary(o => o.Label, StringComparer.Ordinal);
    }
}
