namespace Scrapwright.Core.Milling;

/// <summary>
/// Chance that all panels and boards that may share passes are thick enough. Given what flattening and clean-up take from each panel, and what the strips
/// that several layers come from measure, every pass over faces must leave enough for the most demanding panel it serves, and passes are independent:
/// a product of normal shares, averaged over what was given.
/// </summary>
internal static class ThicknessOdds
{
    /// <summary>The chance, 0 to 1.</summary>
    public static double Of(IReadOnlyList<Demand> demands) => Linked
        .Groups(demands, d => d.Rooms.SelectMany(r => r.Stem.Length > 0 ? new[] { r.Pass, r.Stem } : [r.Pass]))
        .Aggregate(1.0, (all, group) => all * OfLinked(WithNeededStems(group)));

    // A stem with one layer needs no drawing: both spreads are one.
    private static List<Demand> WithNeededStems(List<Demand> demands)
    {
        var layersOf = demands.SelectMany(d => d.Rooms).Where(r => r.StemMm > 0).GroupBy(r => r.Stem)
            .ToDictionary(g => g.Key, g => g.Any(r => r.SpreadMm <= 0) ? 0 : g.Select(r => r.Pass).Distinct().Count());
        return [.. demands.Select(d => d with { Rooms = [.. d.Rooms.Select(Simplified)] })];

        Room Simplified(Room room) => room.StemMm <= 0 ? room with { Stem = "" }
            : layersOf[room.Stem] switch
            {
                0 => room with { Pass = room.Stem, SpreadMm = room.StemMm, Stem = "", StemMm = 0 },
                1 => room with { SpreadMm = Math.Sqrt((room.SpreadMm * room.SpreadMm) + (room.StemMm * room.StemMm)), Stem = "", StemMm = 0 },
                _ => room,
            };
    }

    private static double OfLinked(List<Demand> demands)
    {
        var passes = demands.SelectMany(d => d.Rooms).Where(r => r.SpreadMm > 0).Select(r => r with { Mm = 0 }).Distinct().ToArray();
        int[][] branches = [.. passes.Index().GroupBy(p => p.Item.Stem.Length > 0 ? p.Item.Stem : $"alone {p.Index}").Select(g => g.Select(p => p.Index).ToArray())];
        var room = new double[passes.Length, demands.Count];
        for (var pass = 0; pass < passes.Length; pass++)
        {
            for (var d = 0; d < demands.Count; d++)
            {
                room[pass, d] = demands[d].Rooms.Where(r => r with { Mm = 0 } == passes[pass]).Select(r => r.Mm).DefaultIfEmpty(double.PositiveInfinity).Min();
            }
        }

        var hard = demands.Select(d => d.Rooms.Where(r => r.SpreadMm <= 0).Select(r => r.Mm).DefaultIfEmpty(double.PositiveInfinity).Min()).ToArray();
        var taken = new double[demands.Count];
        return FixedPoints.Mean(demands.Sum(d => d.Dimensions), Share);

        double Share(double[] point)
        {
            var next = 0;
            var share = 1.0;
            for (var d = 0; d < demands.Count; d++)
            {
                var allowed = demands[d].CleanUpShare(hard[d]);
                taken[d] = demands[d].HasCleanUp ? demands[d].LargestCleanUpMm(point[next++] * allowed) : 0;
                share *= allowed * TakeFlattening(d, point, ref next);
            }

            for (var branch = 0; branch < branches.Length && share > 0; branch++)
            {
                share *= branches[branch] is [var alone] ? Enough(alone, 0) : LayersEnough(branches[branch]);
            }

            return share;
        }

        double Enough(int pass, double lostMm)
        {
            var least = double.PositiveInfinity;
            for (var d = 0; d < demands.Count; d++)
            {
                least = Math.Min(least, room[pass, d] - taken[d]);
            }

            return Chance.NormalShare((least - lostMm) / passes[pass].SpreadMm);
        }

        // Even steps suit a smooth function under the bell best: steps of 0.4 deviations are good to nine digits.
        double LayersEnough(int[] layers)
        {
            const double Step = 0.4;
            var sum = 0.0;
            for (var i = -13; i <= 13; i++)
            {
                var z = i * Step;
                var share = Math.Exp(-z * z / 2);
                foreach (var layer in layers)
                {
                    share *= Enough(layer, z * passes[layer].StemMm);
                }

                sum += share;
            }

            return sum * Step / Math.Sqrt(2 * Math.PI);
        }

        // Only what strips without spread allow is drawn; the share of it goes into the answer.
        double TakeFlattening(int d, double[] point, ref int next)
        {
            var limit = hard[d] - taken[d];
            if (!demands[d].HasFlattening)
            {
                return limit >= -1e-9 ? 1 : 0;
            }

            var allowed = double.IsPositiveInfinity(limit) ? 1 : Chance.NormalShare(limit / demands[d].FlatteningMm);
            taken[d] += demands[d].FlatteningMm * Chance.Quantile(point[next++] * allowed);
            return allowed;
        }
    }

    /// <summary>What one strip has over, before its panel's own work takes more or less than its mean.</summary>
    /// <param name="Pass">The pass over its faces.</param>
    /// <param name="SpreadMm">Spread of that pass.</param>
    /// <param name="Mm">What it has over.</param>
    internal readonly record struct Room(string Pass, double SpreadMm, double Mm)
    {
        /// <summary>The pass over the strip it is a layer of; empty for none.</summary>
        public string Stem { get; init; } = "";

        /// <summary>This layer's share of that pass's spread.</summary>
        public double StemMm { get; init; } = 0;
    }

    /// <summary>A panel, or a board with no work of its own.</summary>
    /// <param name="FlatteningMm">Spread of flattening.</param>
    /// <param name="CleanUpMm">Spread of one layer's clean-up.</param>
    /// <param name="Layers">Layers sawn from it.</param>
    /// <param name="Rooms">Its strips.</param>
    internal sealed record Demand(double FlatteningMm, double CleanUpMm, int Layers, Room[] Rooms)
    {
        internal bool HasFlattening => FlatteningMm > 0;

        internal bool HasCleanUp => Layers > 1 && CleanUpMm > 0;

        internal int Dimensions => (HasFlattening ? 1 : 0) + (HasCleanUp ? 1 : 0);

        /// <summary>Share of the clean-ups that strips without spread allow, where no flattening comes between.</summary>
        internal double CleanUpShare(double hardMm) => HasCleanUp && !HasFlattening && !double.IsPositiveInfinity(hardMm)
            ? Math.Pow(Chance.NormalShare(hardMm / (Layers * CleanUpMm)), Layers)
            : 1;

        /// <summary>What the worst of the layers' clean-ups asks of the strips: a layer is one share of them.</summary>
        internal double LargestCleanUpMm(double share) => Layers * CleanUpMm * Chance.Quantile(Math.Pow(share, 1.0 / Layers));
    }
}
