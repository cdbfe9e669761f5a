namespace Scrapwright.Core.Milling;

/// <summary>
/// Chance that all panels and boards that may share passes are wide enough. Widths are sums of normal passes; sums that share a pass are tied, and the chance
/// that all stay below their limits is found one panel after the other, each on condition of those before.
/// </summary>
internal static class WidthOdds
{
    /// <summary>The chance, 0 to 1.</summary>
    public static double Of(IReadOnlyList<Demand> demands) =>
        Linked.Groups(demands, d => d.Passes.Select(p => p.Pass)).Aggregate(1.0, (all, group) => all * OfLinked(group));

    private static double OfLinked(List<Demand> demands)
    {
        var root = Root(demands);
        var sums = new double[demands.Count];
        var layered = demands.Count(d => d.IsTrimmedOften);
        return FixedPoints.Mean(layered + demands.Count - 1, Share);

        double Share(double[] point)
        {
            var next = demands.Count - 1;
            var share = 1.0;
            for (var d = 0; d < demands.Count && share > 0; d++)
            {
                var room = demands[d].RoomMm - (demands[d].IsTrimmedOften ? demands[d].LargestTrimMm(point[next++]) : 0);
                for (var before = 0; before < d; before++)
                {
                    room -= root[d, before] * sums[before];
                }

                if (root[d, d] <= 0)
                {
                    share *= room >= 0 ? 1 : 0;
                    continue;
                }

                var below = Chance.NormalShare(room / root[d, d]);
                share *= below;
                if (d < demands.Count - 1)
                {
                    sums[d] = Chance.Quantile(point[d] * below);
                }
            }

            return share;
        }
    }

    // Lower triangular root of the covariances (Cholesky); a sum that hangs wholly on those before has zero on the diagonal.
    private static double[,] Root(List<Demand> demands)
    {
        var n = demands.Count;
        var root = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var rest = Demand.SharedMm2(demands[i], demands[j]) + (i == j ? demands[i].OwnMm2 : 0);
                var whole = rest;
                for (var k = 0; k < j; k++)
                {
                    rest -= root[i, k] * root[j, k];
                }

                root[i, j] = i == j
                    ? (rest > whole * 1e-12 ? Math.Sqrt(rest) : 0)
                    : root[j, j] > 0 ? rest / root[j, j] : 0;
            }
        }

        return root;
    }

    /// <summary>A panel, or a board whose trim takes nothing uncertain.</summary>
    /// <param name="RoomMm">What it has over, all passes at their means.</param>
    /// <param name="TrimMm">Spread of one trim.</param>
    /// <param name="Layers">How often it is trimmed: each layer for itself.</param>
    /// <param name="Passes">The passes over its strips' edges, each as often as a strip comes from it.</param>
    internal sealed record Demand(double RoomMm, double TrimMm, int Layers, (string Pass, double SpreadMm)[] Passes)
    {
        internal bool IsTrimmedOften => Layers > 1 && TrimMm > 0;

        /// <summary>Variance that belongs to this panel alone.</summary>
        internal double OwnMm2 => IsTrimmedOften ? 0 : TrimMm * TrimMm;

        internal static double SharedMm2(Demand one, Demand other)
        {
            var sum = 0.0;
            foreach (var (pass, spread) in one.Passes)
            {
                foreach (var (otherPass, otherSpread) in other.Passes)
                {
                    sum += pass == otherPass ? spread * otherSpread : 0;
                }
            }

            return sum;
        }

        internal double LargestTrimMm(double share) => TrimMm * Chance.Quantile(Math.Pow(share, 1.0 / Layers));
    }
}
