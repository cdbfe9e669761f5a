namespace Scrapwright.Core.Milling;

/// <summary>
/// Means over the unit cube at fixed points: Gauss's in one or two dimensions, a rank-1 lattice folded to a tent in more.
/// No luck is in it: the same question gets the same answer. Against nested quadrature the chances of glue-ups differ by less than 0.0001 for one panel and 0.001 for three that hang together.
/// </summary>
internal static class FixedPoints
{
    private const int PointsOfFew = 40;
    private const int PointsOfSeveral = 2039;

    // Found component by component for the smallest worst-case error, order 2, weights falling by 0.8 (by a search of our own); dimensions beyond start again.
    private static readonly int[] Strides = [1, 462, 711, 566, 182, 517, 388, 227, 854, 47, 807, 292];

    /// <summary>Mean of a function over the unit cube.</summary>
    public static double Mean(int dimensions, Func<double[], double> value)
    {
        var point = new double[dimensions];
        if (dimensions == 0)
        {
            return value(point);
        }

        if (dimensions <= 2)
        {
            return Nested(0);
        }

        var sum = 0.0;
        for (var i = 0; i < PointsOfSeveral; i++)
        {
            for (var d = 0; d < dimensions; d++)
            {
                point[d] = Folded(i, Strides[d % Strides.Length] + (d / Strides.Length));
            }

            sum += value(point);
        }

        return sum / PointsOfSeveral;

        double Nested(int at)
        {
            var mean = 0.0;
            foreach (var (place, weight) in LegendrePoints.Of(PointsOfFew))
            {
                point[at] = (1 + place) / 2;
                mean += weight / 2 * (at == dimensions - 1 ? value(point) : Nested(at + 1));
            }

            return mean;
        }
    }

    private static double Folded(int i, int stride) =>
        Math.Abs((2 * (((long)i * stride % PointsOfSeveral) + 0.5) / PointsOfSeveral) - 1);
}
