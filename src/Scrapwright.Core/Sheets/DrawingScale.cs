using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Sheets;

/// <summary>Scales of drawings: full size, or one of a short series of reductions (ISO 5455 and the inch scales in between).</summary>
internal static class DrawingScale
{
    private static readonly int[] Series = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 500, 1000];

    /// <summary>The largest scale 1 : n at which the size fits; the smallest there is when none does.</summary>
    internal static int Fit(Length across, Length down, double widthMm, double heightMm)
    {
        foreach (var n in Series)
            if (across.Millimetres / n <= widthMm && down.Millimetres / n <= heightMm) return n;
        return Series[^1];
    }

    internal static string Words(int scale) => scale == 1 ? "full size, 1:1" : $"scale 1:{scale}";
}
