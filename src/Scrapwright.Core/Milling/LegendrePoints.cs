using System.Collections.Concurrent;

namespace Scrapwright.Core.Milling;

/// <summary>Places and weights of Gauss's quadrature between −1 and 1, for functions without corners. Source: [AbramowitzStegun] formula 25.4.29.</summary>
internal static class LegendrePoints
{
    private static readonly ConcurrentDictionary<int, (double Place, double Weight)[]> Known = new();

    /// <summary>So many places, each a root of the Legendre polynomial of that degree, with its weight.</summary>
    public static (double Place, double Weight)[] Of(int count) => Known.GetOrAdd(count, Find);

    private static (double Place, double Weight)[] Find(int count) =>
    [
        .. Enumerable.Range(1, count).Select(i =>
        {
            // Close to the root, then Newton's steps.
            var x = Math.Cos(Math.PI * (i - 0.25) / (count + 0.5));
            for (var step = 0; step < 8; step++)
            {
                var (value, slope) = Polynomial(count, x);
                x -= value / slope;
            }

            var slopeThere = Polynomial(count, x).Slope;
            return (x, 2 / ((1 - (x * x)) * slopeThere * slopeThere));
        }),
    ];

    private static (double Value, double Slope) Polynomial(int degree, double x)
    {
        double before = 1, value = x;
        for (var n = 2; n <= degree; n++)
        {
            (before, value) = (value, (((2 * n) - 1) * x * value - ((n - 1) * before)) / n);
        }

        return (value, degree * ((x * value) - before) / ((x * x) - 1));
    }
}
