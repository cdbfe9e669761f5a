using System.Collections.Immutable;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Building;

/// <summary>Gathers what is no part in the end.</summary>
internal sealed class LeftoverList(Shop shop)
{
    private readonly List<Leftover> leftovers = [];

    internal void Add(Piece piece, bool isDefect = false) =>
        leftovers.Add(new Leftover(piece, isDefect || !IsWorthKeeping(piece) ? LeftoverPlace.ScrapBin : LeftoverPlace.Pile));

    /// <summary>In the order of the pile, then as they come up in the steps.</summary>
    internal ImmutableArray<Leftover> InOrder(IReadOnlyDictionary<string, int> place, IEnumerable<Step> steps)
    {
        var appearance = steps.SelectMany(s => s.Works).SelectMany(w => w.Out).Select(p => p.Id).Distinct().Select((id, i) => (id, i)).ToDictionary(x => x.id, x => x.i);
        return [.. leftovers.OrderBy(l => place[l.Piece.Lanes[0].Offcut]).ThenBy(l => appearance.GetValueOrDefault(l.Piece.Id, -1))];
    }

    private bool IsWorthKeeping(Piece piece) =>
        piece.Length >= shop.KeepLength && piece.Width >= shop.KeepWidth && piece.Thickness >= shop.KeepThickness;
}
