using Scrapwright.Core.Milling;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>
/// Chance that several panels and boards hold, by Gauss's quadrature nested over what each panel's own work takes. Where more than four such works hang together
/// panels are taken as independent, which is never above the truth.
/// </summary>
internal static class CaseShares
{
    private const double Reach = 5;
    private const int MostNested = 4;
    private const int PointsOfALayer = 20;

    /// <summary>The chance, 0 to 1.</summary>
    public static double Of(SizeCase[] cases, double endsMm)
    {
        var length = cases.Aggregate(1.0, (all, c) => all * Math.Pow(Share(c.LengthRoomMm, endsMm), c.Times));
        return length * OfTied(cases, Faces, Thickness) * OfTied(cases, Edges, Width);
    }

    /// <summary>By how much the chance may be off, in thousandths: little unless many works hang together.</summary>
    public static double DoubtPerMille(SizeCase[] cases) =>
        Tied(cases, Faces).Concat(Tied(cases, Edges)).Max(t => (int?)Nested(t)) switch { > 2 => 3, 2 => 0.1, _ => 0.02 };

    private static double OfTied(SizeCase[] cases, Func<SizeCase, IEnumerable<(int Work, double SpreadMm)>> worksOf, Func<SizeCase[], double> share) =>
        Tied(cases, worksOf).Aggregate(1.0, (all, tied) => all
            * (Nested(tied) <= MostNested || tied.Length == 1 ? share(tied) : tied.Aggregate(1.0, (product, one) => product * share([one]))));

    private static int Nested(SizeCase[] tied) => tied.Sum(t => t.Times > 1 ? 2 : 1);

    private static IEnumerable<(int Work, double SpreadMm)> Faces(SizeCase one) => one.Strips.SelectMany(s => s.Faces.Append(s.Layer)).Where(w => w.SpreadMm > 0);

    private static IEnumerable<(int Work, double SpreadMm)> Edges(SizeCase one) => one.Strips.SelectMany(s => s.Edges);

    /// <summary>Groups of cases that have a work in common with one another, directly or through further ones.</summary>
    private static List<SizeCase[]> Tied(SizeCase[] cases, Func<SizeCase, IEnumerable<(int Work, double SpreadMm)>> worksOf)
    {
        var groups = new List<SizeCase[]>();
        var open = cases.ToList();
        while (open.Count > 0)
        {
            List<SizeCase> tied = [open[0]];
            for (var i = 0; i < tied.Count; i++)
            {
                var works = worksOf(tied[i]).Select(w => w.Work).ToHashSet();
                tied.AddRange(open.Where(o => !tied.Contains(o, ReferenceEqualityComparer.Instance) && worksOf(o).Any(w => works.Contains(w.Work))).ToList());
            }

            open.RemoveAll(o => tied.Contains(o, ReferenceEqualityComparer.Instance));
            groups.Add([.. tied]);
        }

        return groups;
    }

    /// <summary>Given what each panel's own work takes, the works on faces are independent; given what a resawn strip measures, so are its layers.</summary>
    private static double Thickness(SizeCase[] tied)
    {
        var strips = tied.SelectMany((c, i) => c.Strips.Select(s => (Case: i, Strip: s))).Where(s => !s.Strip.IsBare).ToArray();
        var works = strips.GroupBy(s => s.Strip.FaceMm > 0 ? s.Strip.FaceKey : -2 - s.Strip.Layer.Work)
            .Select(g => g.GroupBy(s => s.Strip.Layer.Work).Select(l => l.ToArray()).ToArray()).ToArray();
        var bare = tied.Select(c => c.Strips.Where(s => s.IsBare).Select(s => s.RoomMm).DefaultIfEmpty(double.PositiveInfinity).Min()).ToArray();
        var taken = new double[tied.Length];
        var points = PointsFor(tied.Count(c => c.FlattenMm > 0) + tied.Count(c => c.CleanUpMm > 0));
        return Next(0);

        double Next(int at)
        {
            if (at == tied.Length)
            {
                return works.Aggregate(1.0, (all, w) => all * OfWork(w));
            }

            return OverLargest(tied[at].Times, tied[at].CleanUpMm, tied[at].FlattenMm > 0 ? double.PositiveInfinity : bare[at], points, worst =>
                Over(tied[at].FlattenMm, bare[at] - worst, points, flat =>
                {
                    taken[at] = worst + flat;
                    return Next(at + 1);
                }));
        }

        double OfWork((int Case, SizeCase.StripCase Strip)[][] layers)
        {
            var (shared, own) = (layers[0][0].Strip.FaceMm, layers[0][0].Strip.Layer.SpreadMm);
            return layers.Length == 1 || own <= 0
                ? Share(layers.Min(Room), Math.Sqrt((shared * shared) + (own * own)))
                : Over(shared, double.PositiveInfinity, PointsOfALayer, loss => layers.Aggregate(1.0, (all, layer) => all * Share(Room(layer) - loss, own)));
        }

        double Room((int Case, SizeCase.StripCase Strip)[] layer) => layer.Min(s => s.Strip.RoomMm - taken[s.Case]);
    }

    /// <summary>Sums of the works on edges, one after the other on condition of those before (Cholesky's root of their covariances).</summary>
    private static double Width(SizeCase[] tied)
    {
        var n = tied.Length;
        var root = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var rest = Covariance(tied[i], tied[j]) + (i == j && tied[i].Times == 1 ? tied[i].TrimMm * tied[i].TrimMm : 0);
                for (var k = 0; k < j; k++)
                {
                    rest -= root[i, k] * root[j, k];
                }

                root[i, j] = i == j ? Math.Sqrt(Math.Max(0, rest)) : root[j, j] > 1e-9 ? rest / root[j, j] : 0;
            }
        }

        var sums = new double[n];
        var points = PointsFor(n - 1 + tied.Count(c => c is { Times: > 1, TrimMm: > 0 }));
        return Next(0);

        double Next(int at)
        {
            if (at == n)
            {
                return 1;
            }

            return OverLargest(tied[at].Times, tied[at].Times > 1 ? tied[at].TrimMm : 0, double.PositiveInfinity, points, worst =>
            {
                var room = tied[at].WidthRoomMm - worst;
                for (var k = 0; k < at; k++)
                {
                    room -= root[at, k] * sums[k];
                }

                return at == n - 1 || root[at, at] <= 1e-9
                    ? Share(room, root[at, at]) * Next(at + 1)
                    : Over(1, room / root[at, at], points, sum =>
                    {
                        sums[at] = sum;
                        return Next(at + 1);
                    });
            });
        }
    }

    private static double Covariance(SizeCase one, SizeCase other) =>
        (from s in one.Strips from w in s.Edges from o in other.Strips from v in o.Edges where w.Work == v.Work select w.SpreadMm * v.SpreadMm).Sum();

    private static double Share(double roomMm, double spreadMm) => spreadMm > 0 ? Chance.NormalShare(roomMm / spreadMm) : roomMm >= 0 ? 1 : 0;

    private static int PointsFor(int nested) => nested switch { <= 1 => 64, 2 => 32, 3 => 20, _ => 14 };

    /// <summary>Mean over a normal amount of that spread, as far as the limit; nothing beyond counts.</summary>
    private static double Over(double spreadMm, double limitMm, int points, Func<double, double> value) => spreadMm <= 0
        ? (limitMm >= -1e-9 ? value(0) : 0)
        : Chance.NormalShare(limitMm / spreadMm) * Mean(limitMm / spreadMm, points, Density, z => value(z * spreadMm));

    /// <summary>The same for the largest of several normal amounts of that spread.</summary>
    private static double OverLargest(int times, double spreadMm, double limitMm, int points, Func<double, double> value) => spreadMm <= 0
        ? value(0)
        : Math.Pow(Chance.NormalShare(limitMm / spreadMm), times)
            * Mean(limitMm / spreadMm, points, z => Density(z) * Math.Pow(Chance.NormalShare(z), times - 1), z => value(z * spreadMm));

    private static double Density(double z) => Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);

    /// <summary>Mean below a limit, weighed so that few points do.</summary>
    private static double Mean(double limit, int points, Func<double, double> density, Func<double, double> value)
    {
        var (from, to) = (-Reach, Math.Min(Reach, limit));
        if (to <= from)
        {
            return 0;
        }

        var (middle, half) = ((from + to) / 2, (to - from) / 2);
        double sum = 0, weights = 0;
        foreach (var (place, weight) in LegendrePoints.Of(points))
        {
            var z = middle + (half * place);
            var here = weight * density(z);
            weights += here;
            sum += here * value(z);
        }

        return sum / weights;
    }
}
