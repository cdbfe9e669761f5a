using System.Runtime.InteropServices;

namespace Scrapwright.Planning.Cutting;

/// <summary>Best-first search that puts rectangles together, two at a time, the one with the highest bound first. Exact when it runs to its end.</summary>
/// <remarks>
/// Method of Viswanathan and Bagchi, [ViswanathanBagchi1993], with bounds under prices on copies. Rectangles whose bound does not beat a mark are dropped;
/// the mark begins high and is lowered until a layout beats it, so that few rectangles are remembered while no good layout is known.
/// </remarks>
internal sealed class BoardSearch
{
    private readonly BoardSizes sizes;
    private readonly long[] values;
    private readonly long[] reduced;
    private readonly long paidBack;
    private readonly BoardRest rest;
    private readonly BoardLimits limits;
    private readonly int[] sumAlong;
    private readonly int[] sumAcross;
    private readonly CancellationToken cancellationToken;
    private long pairs;

    internal BoardSearch(BoardSizes sizes, long[] values, BoardPrices prices, BoardLimits limits, CancellationToken cancellationToken)
    {
        (this.sizes, this.values, this.limits, this.cancellationToken) = (sizes, values, limits, cancellationToken);
        (reduced, paidBack) = (prices.Reduced, prices.PaidBack);
        rest = new BoardRest(sizes, prices.Table);
        (sumAlong, sumAcross) = (Sums(sizes.Along), Sums(sizes.Across));
        Bound = prices.Bound;
        (Best, Value) = prices.Best;
    }

    /// <summary>The best layout.</summary>
    internal BoardBuild? Best { get; private set; }

    /// <summary>Its value, scaled.</summary>
    internal long Value { get; private set; }

    /// <summary>No layout is worth more, scaled.</summary>
    internal long Bound { get; private set; }

    /// <summary>Searches until the best is proven or the limits are reached.</summary>
    /// <param name="unit">Values are multiples of it.</param>
    internal void Run(long unit)
    {
        for (var step = Math.Max(unit, Bound / 200); Value < Floor(Bound, unit) && !cancellationToken.IsCancellationRequested; step += (step / 2) + 1)
        {
            var mark = Math.Max(Value, Floor(Bound - step, unit));
            var before = Bound;
            if (!Pass(mark, unit)) return;
            if (Value > mark)
            {
                Bound = Value;
                return;
            }

            Bound = Math.Min(before, mark);
        }

        Bound = Math.Max(Value, Floor(Bound, unit));
    }

    private static long Floor(long value, long unit) => value / unit * unit;

    private static int[] Sums(BoardPlaces places)
    {
        var sums = new int[places.Count * places.Count];
        for (var a = 0; a < places.Count; a++)
        {
            for (var b = 0; b < places.Count; b++) sums[(a * places.Count) + b] = places.At(places.Marks[a] + places.Marks[b]);
        }

        return sums;
    }

    /// <summary>One pass with a mark; true when it came to its end: then nothing is worth more than the greater of mark and best value.</summary>
    private bool Pass(long mark, long unit)
    {
        var builds = new BoardBuilds(values.Length);
        var open = new PriorityQueue<int, long>();
        var closed = new List<Half>();
        var uses = new byte[values.Length];
        void Offer(BoardBuilds.Row row, ReadOnlySpan<byte> copies)
        {
            var at = builds.Add(row, copies);
            if (at < 0) return;
            open.Enqueue(at, -(row.Reduced + rest.At(row.Along, row.Across)));
            if (row.Value > Value)
            {
                (Value, Best) = (row.Value, builds.Build(at, sizes));
                mark = Math.Max(mark, Value);
            }
        }

        for (var s = 0; s < sizes.Shapes.Length; s++)
        {
            var shape = sizes.Shapes[s];
            if (sizes.Counts[shape.Part] == 0) continue;
            uses.AsSpan().Clear();
            uses[shape.Part] = 1;
            Offer(new BoardBuilds.Row(sizes.Along.At(shape.Length), sizes.Across.At(shape.Width), values[shape.Part], reduced[shape.Part], s, -1, false), uses);
        }

        while (open.TryDequeue(out var next, out var worst))
        {
            var top = -worst + paidBack;
            if (Floor(top, unit) <= mark) return true;
            if (pairs > limits.MostPairs || builds.Rows.Count > limits.MostBuilds || cancellationToken.IsCancellationRequested)
            {
                Bound = Math.Max(Value, Math.Min(Bound, Floor(top, unit)));
                return false;
            }

            var row = builds.Rows[next];
            closed.Add(new Half(row.Along, row.Across, row.Reduced, next));
            pairs += closed.Count;
            foreach (var other in CollectionsMarshal.AsSpan(closed))
            {
                // Reduced values are far from the ends of a long, and this loop takes nearly all the time.
                var least = unchecked(mark - paidBack + unit - row.Reduced - other.Reduced);
                var along = sumAlong[(row.Along * sizes.Along.Count) + other.Along];
                var wider = Math.Max(row.Across, other.Across);
                if (along >= 0 && rest.At(along, wider) >= least && Fits(builds, next, other.Build, uses))
                {
                    Offer(Pair(along, wider, row, builds, next, other.Build, true), uses);
                }

                var across = sumAcross[(row.Across * sizes.Across.Count) + other.Across];
                var longer = Math.Max(row.Along, other.Along);
                if (across >= 0 && rest.At(longer, across) >= least && Fits(builds, next, other.Build, uses))
                {
                    Offer(Pair(longer, across, row, builds, next, other.Build, false), uses);
                }
            }
        }

        return true;
    }

    private bool Fits(BoardBuilds builds, int a, int b, byte[] uses)
    {
        var first = builds.Copies(a);
        var second = builds.Copies(b);
        for (var p = 0; p < uses.Length; p++)
        {
            var sum = first[p] + second[p];
            if (sum > sizes.Counts[p]) return false;
            uses[p] = (byte)sum;
        }

        return true;
    }

    private static BoardBuilds.Row Pair(int along, int across, BoardBuilds.Row first, BoardBuilds builds, int at, int other, bool isEndToEnd)
    {
        var second = builds.Rows[other];
        return new BoardBuilds.Row(along, across, first.Value + second.Value, first.Reduced + second.Reduced, at, other, isEndToEnd);
    }

    /// <summary>What the search needs of a rectangle to put another beside it.</summary>
    private readonly record struct Half(int Along, int Across, long Reduced, int Build);
}
