namespace Scrapwright.Core.Milling;

/// <summary>
/// Shares out one chance among sizes that must all hold, so that what is held in hand costs least: of every size the density at its margin is as high as its
/// cost per deviation, by one factor for all (Lagrange's condition, with the share below the margin taken as one in it). The product of the shares is exact.
/// </summary>
internal sealed class MarginSplit
{
    /// <summary>More than this is never held in hand: the tail beyond is below 1e-6.</summary>
    private const double Most = 4.8;

    private readonly List<(double Cost, int Times)> sizes = [];

    /// <summary>Adds a size.</summary>
    /// <param name="cost">Cost of one deviation in hand, in any unit; zero or less when it has no spread.</param>
    /// <param name="times">How often it must hold.</param>
    public void Add(double cost, int times) => sizes.Add((cost, times));

    /// <summary>Deviations of each size in the order added.</summary>
    /// <param name="percent">Chance that all hold, 50 to 99 [%].</param>
    public double[] Deviations(int percent)
    {
        var asked = Math.Log(percent / 100.0);
        double low = 0, high = Math.Max(1, sizes.Select(s => s.Cost / s.Times).DefaultIfEmpty(1).Max()) * 1e9;

        // The factor goes over many powers of ten, so it is halved on its logarithm.
        var (lowest, highest) = (Math.Log(1e-12), Math.Log(high));
        for (var step = 0; step < 100; step++)
        {
            var middle = (lowest + highest) / 2;
            if (LogChance(Math.Exp(middle)) >= asked)
            {
                lowest = middle;
                low = Math.Exp(middle);
            }
            else
            {
                highest = middle;
            }
        }

        return [.. sizes.Select(s => At(s, low))];
    }

    private double LogChance(double factor) => sizes.Sum(s => s.Cost <= 0 ? 0 : s.Times * Math.Log(Chance.NormalShare(At(s, factor))));

    private static double At((double Cost, int Times) size, double factor)
    {
        var density = factor * size.Cost / size.Times * Math.Sqrt(2 * Math.PI);
        return size.Cost <= 0 || density >= 1 ? 0 : Math.Min(Most, Math.Sqrt(-2 * Math.Log(density)));
    }
}
