using System.Collections.Immutable;
using Google.OrTools.Sat;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Building;

/// <summary>One-dimensional cutting stock: which piece from which rod, so that the fewest rods are bought and, among those, the fewest are cut.</summary>
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

    private static IEnumerable<(RodStock Stock, bool Bought, List<RodPiece> Cut)> CutDiameter(ImmutableArray<RodPiece> pieces, Shop shop)
    {
        var stocks = shop.Rods.Where(r => r.Diameter == pieces[0].Diameter).ToList();
        var bins = stocks.SelectMany(s => Enumerable.Repeat((Stock: s, Bought: false), s.OnHand)).ToList();
        bins.AddRange(FirstFit(pieces, bins, stocks, shop).Select(s => (s, true)));
        var assignment = Assign(pieces, bins, shop);
        return bins.Select((bin, b) => (bin.Stock, bin.Bought, pieces.Where((_, p) => assignment[p] == b).ToList()))
            .Where(x => x.Item3.Count > 0);
    }

    /// <summary>How many rods first-fit decreasing would buy: an upper bound for the exact model.</summary>
    private static List<RodStock> FirstFit(ImmutableArray<RodPiece> pieces, List<(RodStock Stock, bool Bought)> onHand, List<RodStock> stocks, Shop shop)
    {
        var kerf = shop.TableSaw.Kerf;
        var room = onHand.Select(b => b.Stock.Length + kerf).ToList();
        var bought = new List<RodStock>();
        foreach (var piece in pieces)
        {
            var bin = room.FindIndex(r => r >= piece.Length + kerf);
            if (bin < 0)
            {
                bought.Add(StockFor(piece, stocks, shop));
                room.Add(bought[^1].Length + kerf);
                bin = room.Count - 1;
            }

            room[bin] -= piece.Length + kerf;
        }

        return bought;
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

    private static int[] Assign(ImmutableArray<RodPiece> pieces, List<(RodStock Stock, bool Bought)> bins, Shop shop)
    {
        var model = new CpModel();
        var grid = Grid.For([shop.TableSaw.Kerf, .. pieces.Select(p => p.Length), .. bins.Select(b => b.Stock.Length)]);
        var kerf = grid.Up(shop.TableSaw.Kerf);
        var used = bins.Select(_ => model.NewBoolVar("")).ToArray();
        var x = pieces.Select(_ => bins.Select(_ => model.NewBoolVar("")).ToArray()).ToArray();
        for (var p = 0; p < pieces.Length; p++)
        {
            model.AddExactlyOne(x[p]);
        }

        for (var b = 0; b < bins.Count; b++)
        {
            var room = grid.Down(bins[b].Stock.Length) + kerf;
            model.Add(LinearExpr.WeightedSum(x.Select(row => row[b]).ToArray(), pieces.Select(p => grid.Up(p.Length) + kerf).ToArray()) <= room * used[b]);
            if (b > 0 && bins[b].Equals(bins[b - 1]))
            {
                model.AddImplication(used[b], used[b - 1]);
            }
        }

        model.Minimize(LinearExpr.WeightedSum(used, bins.Select(b => b.Bought ? (long)bins.Count + 1 : 1).ToArray()));
        var solver = new CpSolver { StringParameters = "num_workers:1 random_seed:1 max_deterministic_time:2" };
        var status = solver.Solve(model);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            throw new InvalidOperationException($"Rods of {pieces[0].Diameter}: first fit found a way but the model did not ({status}). Maybe a grid rounding.");
        }

        return [.. x.Select(row => Array.FindIndex(row, v => solver.BooleanValue(v)))];
    }
}
