using System.Globalization;
using System.Text;

namespace Scrapwright.Client.Wood;

/// <summary>Lines of grain for a drawing of a piece of wood: always the same for the same piece, so that it is recognised again. Decoration only; carries no meaning.</summary>
public static class Grain
{
    /// <summary>Path data of a few lines that run along a box.</summary>
    /// <param name="name">What decides the run of the lines: the piece's label.</param>
    /// <param name="x">Left side.</param>
    /// <param name="y">Upper side.</param>
    /// <param name="width">Size along the lines.</param>
    /// <param name="height">Size across the lines.</param>
    public static string Path(string name, double x, double y, double width, double height)
    {
        var seed = name.Aggregate(2166136261u, (hash, c) => unchecked((hash ^ c) * 16777619));
        var lines = Math.Clamp((int)(height / 3.2), 1, 9);
        var text = new StringBuilder();
        for (var i = 0; i < lines; i++)
        {
            var middle = y + (height * (i + 0.3 + (0.4 * Next())) / lines);
            var swing = height / lines * 0.45;
            text.Append(CultureInfo.InvariantCulture, $"M{x:0.#} {Within(middle + (swing * (Next() - 0.5))):0.#}C{x + (width * (0.2 + (0.2 * Next()))):0.#} {Within(middle + (swing * (Next() - 0.5) * 2)):0.#} {x + (width * (0.6 + (0.2 * Next()))):0.#} {Within(middle + (swing * (Next() - 0.5) * 2)):0.#} {x + width:0.#} {Within(middle + (swing * (Next() - 0.5))):0.#}");
        }

        return text.ToString();

        double Within(double at) => Math.Clamp(at, y + 0.4, y + Math.Max(0.4, height - 0.4));

        double Next()
        {
            seed = unchecked((seed * 1664525) + 1013904223);
            return (seed >> 8) / (double)(1 << 24);
        }
    }
}
