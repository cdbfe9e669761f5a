using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Planning.Cutting;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Building;

/// <summary>One-dimensional cutting stock: which piece from which rod, so that the least length of rod is bought and, among those ways, the fewest rods are cut. A rod is priced by its length (estimate).</summary>
internal static class RodCutting
{
    private const string DefaultSpecies = "paper-birch";

    /// <summary>The rods to cut; the pieces of each in the order given, which is the order in which they are cut.</summary>
    internal static ImmutableArray<RodUse> Cut(ImmutableArray<RodPiece> pieces, Shop shop)
    {
        var uses = ImmutableArray.CreateBuilder<RodUse>();
        foreach (var group in pieces.GroupBy(p => p.Diameter).OrderBy(g => g.Key))
        {
            foreach (var (stock, bought, cut) in CutDiameter([.. group.OrderByDescending(p => p.Length)], shop))
            {
                var kerf = shop.TableSaw.Kerf;
                var left = stock.Length - Length.Sum(cut.Select(p => p.Length)) - (kerf * cut.Count);
                uses.Add(new RodUse(
                    $"R{uses.Count + 1}", stock.Species, stock.Diameter, stock.Length, bought,
                    [.. cut.OrderBy(pieces.IndexOf).Select(p => p.Id)], Length.Max(Length.Zero, left)));
            }
        }

        return uses.ToImmutable();
    }

    /// <summary>One way for all: what is bought, by length, counts before the number of rods cut, so those on hand come first.</summary>
    private static IEnumerable<(RodStock Stock, bool Bought, List<RodPiece> Cut)> CutDiameter(ImmutableArray<RodPiece> pieces, Shop shop)
    {
        var known = shop.Rods.Where(r => r.Diameter == pieces[0].Diameter).ToList();
        var bins = known.Where(s => s.OnHand > 0).Select(s => (Stock: s, Bought: false))
            .Concat(known.Concat(pieces.Select(p => StockFor(p, known, shop))).DistinctBy(s => s.Length).OrderBy(s => s.Length).Select(s => (Stock: s, Bought: true)))
            .ToArray();
        var groups = pieces.GroupBy(p => p.Length).ToArray();
        var grid = Grid.For(bins.Select(b => b.Stock.Length));
        var problem = new BarProblem(
            [.. groups.Select(g => new BarItem(g.Key, g.Count()))],
            [.. bins.Select(b => new BarStock(b.Stock.Length, b.Bought ? 1 + (grid.Up(b.Stock.Length) * (pieces.Length + 1)) : 1, b.Bought ? null : b.Stock.OnHand))],
            shop.TableSaw.Kerf);
        if (BarSolver.Solve(problem, BarLimits.Quick) is not BarOutcome.Cut cut)
        {
            throw new InvalidOperationException($"Rods of {pieces[0].Diameter} hold not all pieces, although as many as need be are bought. Maybe a rod is shorter than its piece.");
        }

        var left = groups.Select(g => new Queue<RodPiece>(g)).ToArray();
        foreach (var bar in cut.Bars.OrderBy(b => b.Stock))
        {
            yield return (bins[bar.Stock].Stock, bins[bar.Stock].Bought, [.. bar.Pieces.SelectMany((n, g) => Enumerable.Range(0, n).Select(_ => left[g].Dequeue()))]);
        }
    }

    /// <summary>The shortest rod the shop knows that is long enough; else one of 36 in or a metre (common practice, no source), or longer where the piece is.</summary>
    private static RodStock StockFor(RodPiece piece, List<RodStock> stocks, Shop shop)
    {
        var known = stocks.Where(s => s.Length >= piece.Length).OrderBy(s => s.Length).FirstOrDefault();
        if (known is not null)
        {
            return known;
        }

        var (step, usual) = shop.Unit == LengthUnit.Inch
            ? (Length.FromInches(1), Length.FromInches(36))
            : (Length.FromMillimetres(10), Length.FromMillimetres(1000));
        var species = piece.Species.IsEmpty ? stocks.FirstOrDefault()?.Species ?? DefaultSpecies : piece.Species[0];
        var length = Length.Max(usual, (piece.Length + shop.TableSaw.Kerf).RoundTo(step, Rounding.Up));
        return new RodStock(species, piece.Diameter, length, 0);
    }
}
