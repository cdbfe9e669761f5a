namespace Scrapwright.Core.Plans.Chances;

/// <summary>Mean of a function over the unit cube: a rule of points, always the same, no chance in it.</summary>
internal static class CubePoints
{
    private const int AlongOne = 256;
    private const int AlongTwo = 48;
    private const int Many = 4096;

    /// <summary>Roots of these, by their fractions, spread points evenly in many directions (Richtmyer). Source: [GenzBretz] ch. 4.2.</summary>
    private static readonly int[] Primes = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83, 89, 97];

    /// <summary>A function of a point.</summary>
    public delegate double At(ReadOnlySpan<double> point);

    /// <summary>Mean over the cube of so many directions; 1 to 25, further ones stay in the middle.</summary>
    public static double Mean(int directions, At function) => directions switch
    {
        1 => Grid(AlongOne, 1, function),
        2 => Grid(AlongTwo, 2, function),
        _ => Lattice(directions, function),
    };

    private static double Grid(int along, int directions, At function)
    {
        Span<double> point = stackalloc double[directions];
        double sum = 0;
        double weights = 0;
        var second = directions == 2 ? along : 1;
        for (var i = 0; i < along; i++)
        {
            (point[0], var weight) = Eased((i + 0.5) / along);
            for (var j = 0; j < second; j++)
            {
                var both = weight;
                if (directions == 2)
                {
                    (point[1], var other) = Eased((j + 0.5) / along);
                    both *= other;
                }

                sum += both * function(point);
                weights += both;
            }
        }

        return sum / weights;
    }

    /// <summary>u = 3t² − 2t³ takes the ends of the interval out, so that midpoints are far more exact.</summary>
    private static (double Place, double Weight) Eased(double t) => (t * t * (3 - (2 * t)), 6 * t * (1 - t));

    private static double Lattice(int directions, At function)
    {
        Span<double> point = stackalloc double[directions];
        double sum = 0;
        for (var i = 0; i < Many; i++)
        {
            for (var d = 0; d < directions; d++)
            {
                var whole = d < Primes.Length ? (i + 0.5) * Math.Sqrt(Primes[d]) : 0.25;

                // Folded in the middle, so that the function closes on itself.
                point[d] = Math.Clamp(Math.Abs((2 * (whole - Math.Floor(whole))) - 1), 1e-9, 1 - 1e-9);
            }

            sum += function(point);
        }

        return sum / Many;
    }
}
