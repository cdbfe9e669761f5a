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

    /// <summary>The number of standard deviations below which a share of a standard normal distribution lies: the inverse of <see cref="NormalShare"/>, to 1e-5 between 0.005 and 0.995 and to 5e-5 between 0.001 and 0.999.</summary>
    /// <param name="share">The share; kept within 1e-12 and 1 − 1e-12.</param>
    /// <remarks>A rational approximation, made better by one step of Halley's. Source: [AbramowitzStegun] formula 26.2.23.</remarks>
    public static double Quantile(double share)
    {
        share = Math.Clamp(share, 1e-12, 1 - 1e-12);
        var t = Math.Sqrt(-2 * Math.Log(Math.Min(share, 1 - share)));
        var z = t - ((2.515517 + (t * (0.802853 + (t * 0.010328)))) / (1 + (t * (1.432788 + (t * (0.189269 + (t * 0.001308)))))));
        if (t < 5)
        {
            var step = (1 - Math.Min(share, 1 - share) - NormalShare(z)) * Math.Sqrt(2 * Math.PI) * Math.Exp(z * z / 2);
            z += step / (1 - (z * step / 2));
        }

        return share < 0.5 ? -z : z;
    }
}
