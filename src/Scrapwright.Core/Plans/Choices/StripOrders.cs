using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Choices;

/// <summary>Other orders in which the strips of a glue-up may lie.</summary>
public static class StripOrders
{
    // Six strips, all of different widths, have 360 orders that look different; with many more strips the first of them will do.
    private const int MostLookedAt = 2000;

    /// <summary>
    /// Every order that looks different from the present one, and keeps neighbours apart as the design asks: mirrored ones first, then by contrast. Of an order and the same turned
    /// round only one is there, and strips of one wood and width are alike. Of glue-ups with very many orders the first two thousand found are looked at.
    /// </summary>
    /// <param name="index">The plan.</param>
    /// <param name="glueUp">One of its glue-ups.</param>
    /// <returns>For each place from the lower edge, which strip of the present order comes there.</returns>
    public static ImmutableArray<ImmutableArray<int>> Of(PlanIndex index, GlueUp glueUp)
    {
        ArgumentNullException.ThrowIfNull(index);
        ArgumentNullException.ThrowIfNull(glueUp);
        var strips = glueUp.Strips.Select(s => (Species: index.SpeciesOf(s.Offcut), s.Width)).ToArray();
        var kinds = strips.Distinct().ToArray();
        var present = strips.Select(s => Array.IndexOf(kinds, s)).ToArray();
        var wish = index.Product(glueUp.Gift)?.Parts.FirstOrDefault(p => p.Key == glueUp.Part)?.Wish;
        var mayTouch = MayTouch(kinds, wish, index.Plan.Request.Shop);
        var found = new List<int[]>();
        Lay([], [.. kinds.Select((_, kind) => present.Count(p => p == kind))], strips.Length, mayTouch, found);
        return
        [
            .. found.Where(order => !order.SequenceEqual(present) && !order.Reverse().SequenceEqual(present))
                .OrderByDescending(IsMirrored)
                .ThenByDescending(order => PanelOrder.LeastContrast(SpeciesOf(order, kinds)))
                .ThenByDescending(order => PanelOrder.MeanContrast(SpeciesOf(order, kinds)))
                .Select(order => PlacesOf(order, present)),
        ];
    }

    private static bool[,] MayTouch((string Species, Length Width)[] kinds, PanelWish? wish, Shop shop)
    {
        var may = new bool[kinds.Length, kinds.Length];
        for (var one = 0; one < kinds.Length; one++)
        {
            for (var other = 0; other < kinds.Length; other++) may[one, other] = PanelOrder.Keeps([kinds[one].Species, kinds[other].Species], wish, shop);
        }

        return may;
    }

    /// <summary>Lays one strip after the other wherever it may lie, until all lie.</summary>
    private static void Lay(ImmutableList<int> laid, int[] left, int strips, bool[,] mayTouch, List<int[]> found)
    {
        if (found.Count >= MostLookedAt) return;
        if (laid.Count == strips)
        {
            if (IsFirstWayRound(laid)) found.Add([.. laid]);
            return;
        }

        for (var kind = 0; kind < left.Length; kind++)
        {
            if (left[kind] == 0 || (laid.Count > 0 && !mayTouch[laid[^1], kind])) continue;
            left[kind]--;
            Lay(laid.Add(kind), left, strips, mayTouch, found);
            left[kind]++;
        }
    }

    private static bool IsFirstWayRound(ImmutableList<int> order)
    {
        for (int i = 0, j = order.Count - 1; i < j; i++, j--)
        {
            if (order[i] != order[j]) return order[i] < order[j];
        }

        return true;
    }

    private static bool IsMirrored(int[] order) => order.SequenceEqual(order.Reverse());

    private static ImmutableArray<string> SpeciesOf(int[] order, (string Species, Length Width)[] kinds) => [.. order.Select(kind => kinds[kind].Species)];

    private static ImmutableArray<int> PlacesOf(int[] order, int[] present)
    {
        var places = present.Index().GroupBy(p => p.Item, p => p.Index).ToDictionary(g => g.Key, g => new Queue<int>(g));
        return [.. order.Select(kind => places[kind].Dequeue())];
    }
}
