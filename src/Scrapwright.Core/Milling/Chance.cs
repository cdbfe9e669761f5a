using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Milling;

/// <summary>Odds of sizes whose spread is taken as normal (sum of many small independent errors).</summary>
public static class Chance
{
    /// <summary>Chance that a size is at least the target, 0 to 1.</summary>
    /// <param name="expected">Expected size.</param>
    /// <param name="spread">One standard deviation; zero means certain.</param>
    /// <param name="target">Size asked for.</param>
    public static double OfAtLeast(Length expected, Length spread, Length target)
    {
        if (spread.Picometres == 0)
        {
            return expected >= target ? 1 : 0;
        }

        return NormalShare((expected - target).Picometres / (double)spread.Picometres);
    }

    /// <summary>Share of a standard normal distribution below <paramref name="z"/>, absolute error below 7.5e-8. Source: [AbramowitzStegun] formula 26.2.17.</summary>
    public static double NormalShare(double z)
    {
        var x = Math.Abs(z);
        var t = 1 / (1 + (0.2316419 * x));
        var tail = Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI)
            * t * (0.319381530 + (t * (-0.356563782 + (t * (1.781477937 + (t * (-1.821255978 + (t * 1.330274429))))))));
        return z >= 0 ? 1 - tail : tail;
    }

    /// <summary>How many standard deviations must lie between target and expectation for the asked chance, as exact as <see cref="DeviationsForRisk"/>.</summary>
    /// <param name="percent">Asked chance, 50 to 99 [%].</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside 50 to 99.</exception>
    public static double Deviations(int percent)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(percent, 50);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(percent, 99);
        return DeviationsForRisk(1000 - (10 * percent));
    }

    /// <summary>Length kept in hand for a spread, rounded up to a picometre.</summary>
    /// <param name="spread">One standard deviation.</param>
    /// <param name="deviations">How many of them.</param>
    public static Length Margin(Length spread, double deviations) => Length.FromPicometres((long)Math.Ceiling(spread.Picometres * deviations));

    /// <summary>How many standard deviations leave only the given risk above them: the inverse of the upper tail, exact to 1e-7 of it.</summary>
    /// <param name="riskPerMille">Risk. [‰], above 0 and below 1000; below 1e-4 it is taken as 1e-4.</param>
    /// <remarks>Source: [AbramowitzStegun] formula 26.2.23, then three steps of Newton's method on <see cref="NormalShare"/>.</remarks>
    public static double DeviationsForRisk(double riskPerMille)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(riskPerMille, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(riskPerMille, 1000);
        var risk = Math.Max(riskPerMille, 1e-4) / 1000;
        if (risk > 0.5)
        {
            return -DeviationsForRisk(1000 - riskPerMille);
        }

        var t = Math.Sqrt(-2 * Math.Log(risk));
        var z = t - ((2.515517 + (t * (0.802853 + (t * 0.010328)))) / (1 + (t * (1.432788 + (t * (0.189269 + (t * 0.001308)))))));
        for (var step = 0; step < 3; step++)
        {
            z += (NormalShare(-z) - risk) * Math.Sqrt(2 * Math.PI) * Math.Exp(z * z / 2);
        }

        return z;
    }
}
