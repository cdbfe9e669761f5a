using System.Collections.Immutable;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Sheets;

/// <summary>
/// A hatch for each species of one plan, so that they are told apart in black and white: continuous and dashed parallel lines after ISO 128-3,
/// at 45° and 135°, upright and level, single, paired and crossed. The darker the wood, the denser the hatch. Our own series.
/// </summary>
internal sealed class Hatches
{
    // Angle in degrees, distance of the lines, second line at that distance (0 for none), dash and gap (0 for unbroken). In the order of density.
    private static readonly HatchPattern[][] Series =
    [
        [],
        [new(45, 2.8, 0, 1.2, 1.6)],
        [new(135, 3, 0, 0, 0)],
        [new(90, 2.2, 0, 1.6, 1)],
        [new(45, 3.2, 0.7, 0, 0)],
        [new(0, 1.5, 0, 2.4, 0.9)],
        [new(45, 2.6, 0, 0, 0), new(135, 2.6, 0, 0, 0)],
        [new(90, 1.4, 0, 0, 0)],
        [new(135, 1.8, 0.5, 0, 0)],
        [new(0, 1.5, 0, 0, 0), new(90, 1.5, 0, 0, 0)],
        [new(45, 0.8, 0, 0, 0)],
        [new(45, 1.1, 0, 0, 0), new(135, 1.1, 0, 0, 0)],
    ];

    private readonly Dictionary<string, int> places;

    private Hatches(Dictionary<string, int> places) => this.places = places;

    /// <summary>The species that have a hatch, lightest first.</summary>
    internal IEnumerable<string> Species => places.OrderBy(p => p.Value).Select(p => p.Key);

    /// <summary>Hatches for the species named, spread over the series by lightness; more species than patterns share neighbours' patterns.</summary>
    internal static Hatches For(IEnumerable<string> species)
    {
        var sorted = species.Distinct().OrderByDescending(LightnessOf).ThenBy(s => s, StringComparer.Ordinal).ToArray();
        var last = Math.Max(1, sorted.Length - 1);
        return new(sorted.Select((key, i) => (key, Place: sorted.Length <= Series.Length ? Spread(i, last, sorted.Length) : i))
            .ToDictionary(p => p.key, p => p.Place));
    }

    internal void Fill(Pen pen, Frame frame, string species)
    {
        if (!places.TryGetValue(species, out var place)) return;
        var strokes = Series[place % Series.Length].SelectMany(p => p.Strokes(frame)).ToImmutableArray();
        if (!strokes.IsEmpty) pen.Add(new Mark.Hatch(strokes, Ink.Thin));
    }

    private static int Spread(int index, int last, int count) =>
        count == Series.Length ? index : index * (Series.Length - 2) / last + (index > 0 && count < 3 ? 1 : 0);

    private static double LightnessOf(string key) => SpeciesTable.FindKey(key)?.Colour.L ?? 50;
}
