using Scrapwright.Core.Milling;

namespace Scrapwright.Core.Plans.Chances;

/// <summary>
/// Demands that share draws. Draws that come in the same demands in the same proportion are first made one. Then some are fixed, so few that every demand
/// has at most one draw left; the chance of those is a product of normal shares, and its mean over the fixed ones is the chance.
/// </summary>
internal sealed class DemandGroup
{
    private readonly double[] over;
    private readonly double[][] spreads;
    private readonly int[] order;
    private readonly int fixedDraws;
    private readonly List<int>[] limiting;

    /// <summary>Prepares a group.</summary>
    public DemandGroup(IReadOnlyList<Demand> demands)
    {
        over = [.. demands.Select(d => d.OverMm)];
        spreads = Columns(demands);
        order = Order();
        fixedDraws = FixedDraws();
        limiting = [.. order.Select(_ => new List<int>())];
        for (var demand = 0; demand < over.Length; demand++)
        {
            limiting[Array.FindLastIndex(order, draw => spreads[draw][demand] > 0)].Add(demand);
        }
    }

    /// <summary>Chance that all demands hold.</summary>
    public double Chance() => fixedDraws == 0 ? Share([]) : CubePoints.Mean(fixedDraws, Share);

    /// <summary>Spreads by draw and demand.</summary>
    private static double[][] Columns(IReadOnlyList<Demand> demands)
    {
        var columns = new SortedDictionary<int, double[]>();
        for (var i = 0; i < demands.Count; i++)
        {
            foreach (var (draw, spread) in demands[i].Draws)
            {
                if (!columns.TryGetValue(draw, out var column))
                {
                    columns[draw] = column = new double[demands.Count];
                }

                column[i] += spread;
            }
        }

        var merged = new List<double[]>();
        foreach (var column in columns.Values)
        {
            if (merged.Find(m => IsInProportion(m, column)) is not { } alike)
            {
                merged.Add(column);
                continue;
            }

            var at = Array.FindIndex(column, s => s > 0);
            var factor = Math.Sqrt((alike[at] * alike[at]) + (column[at] * column[at])) / alike[at];
            for (var i = 0; i < alike.Length; i++)
            {
                alike[i] *= factor;
            }
        }

        return [.. merged];
    }

    private static bool IsInProportion(double[] one, double[] other)
    {
        var at = Array.FindIndex(one, s => s > 0);
        var factor = other[at] / one[at];
        return factor > 0 && one.Zip(other).All(p => Math.Abs((p.First * factor) - p.Second) <= 1e-9 * p.Second);
    }

    /// <summary>Fixed draws first: again and again the one that most demands with two or more draws left share.</summary>
    private int[] Order()
    {
        var left = Enumerable.Range(0, spreads.Length).ToHashSet();
        var fixedFirst = new List<int>();
        while (true)
        {
            int[] open = [.. Enumerable.Range(0, over.Length).Where(demand => left.Count(draw => spreads[draw][demand] > 0) > 1)];
            if (open.Length == 0)
            {
                return [.. fixedFirst, .. left.Order()];
            }

            var next = left.OrderByDescending(draw => open.Count(demand => spreads[draw][demand] > 0)).ThenByDescending(draw => spreads[draw].Sum()).ThenBy(draw => draw).First();
            fixedFirst.Add(next);
            left.Remove(next);
        }
    }

    private int FixedDraws()
    {
        var count = 0;
        while (over.Index().Any(d => order.Skip(count).Count(draw => spreads[draw][d.Index] > 0) > 1))
        {
            count++;
        }

        return count;
    }

    /// <summary>Weight of one point: draw by draw the chance that the demands it decides hold, given the draws before it.</summary>
    /// <param name="point">Where in the part that holds each fixed draw lies, 0 to 1.</param>
    private double Share(ReadOnlySpan<double> point)
    {
        Span<double> room = stackalloc double[over.Length];
        over.CopyTo(room);
        var share = 1.0;
        for (var i = 0; i < order.Length; i++)
        {
            var column = spreads[order[i]];
            var least = double.PositiveInfinity;
            foreach (var demand in limiting[i])
            {
                least = Math.Min(least, room[demand] / column[demand]);
            }

            // The draw is at least −least, which is as likely as at most least.
            var holds = double.IsPositiveInfinity(least) ? 1 : Milling.Chance.NormalShare(least);
            share *= holds;
            if (share <= 0)
            {
                return 0;
            }

            if (i < fixedDraws)
            {
                var draw = Milling.Chance.DeviationsForRisk(Math.Clamp(holds * point[i] * 1000, 1e-4, 1000 - 1e-4));
                for (var demand = 0; demand < room.Length; demand++)
                {
                    room[demand] += column[demand] * draw;
                }
            }
        }

        return share;
    }
}
