using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Milling;

/// <summary>How likely each size is, just before the last cut or pass sets it: a curve over what is left in hand.</summary>
/// <param name="Size">Which size.</param>
/// <param name="OverMm">What is in hand, least first; below zero where the size is missed. [mm]</param>
/// <param name="Heights">How likely, the highest being 1. [1]</param>
/// <param name="BelowShare">Chance that the size is missed. 0 to 1.</param>
public sealed record OddsCurve(SizeKind Size, ImmutableArray<double> OverMm, ImmutableArray<double> Heights, double BelowShare)
{
    private const int Steps = 48;

    /// <summary>The curve of a panel's width or thickness; null where nothing is uncertain.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Another size.</exception>
    internal static OddsCurve? Of(WorkedPanel panel, SizeKind size, Shop shop)
    {
        Func<double, double> atLeast = size switch
        {
            SizeKind.Width => over => SizeChance.WidthShare(panel, shop, over),
            SizeKind.Thickness => over => SizeChance.ThicknessShare(panel, shop, over),
            _ => throw new ArgumentOutOfRangeException(nameof(size), size, "Width or thickness."),
        };
        var (low, high) = (Where(atLeast, 0.999), Where(atLeast, 0.001));
        if (high - low < 1e-3)
        {
            return null;
        }

        var step = (high - low) * 1.2 / Steps;
        double[] edges = [.. Enumerable.Range(0, Steps + 2).Select(i => low - (0.1 * (high - low)) + ((i - 0.5) * step))];
        double[] shares = [.. edges.Select(atLeast)];
        double[] heights = [.. Enumerable.Range(0, Steps + 1).Select(i => Math.Max(0, shares[i] - shares[i + 1]))];
        var highest = heights.Max();
        return new OddsCurve(
            size, [.. edges.Take(Steps + 1).Select(e => e + (step / 2))], [.. heights.Select(h => h / highest)], 1 - atLeast(0));
    }

    // Halving: the share falls as more is asked for.
    private static double Where(Func<double, double> atLeast, double share)
    {
        double low = -200, high = 200;
        while (high - low > 1e-3)
        {
            var middle = (low + high) / 2;
            (low, high) = atLeast(middle) >= share ? (middle, high) : (low, middle);
        }

        return low;
    }
}
