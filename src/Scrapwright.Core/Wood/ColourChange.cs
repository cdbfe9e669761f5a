using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Scrapwright.Core.Wood;

/// <summary>How the colour of wood changes under oil and with the years. All of it is an estimate; boards differ more than this.</summary>
public static class ColourChange
{
    // Estimate: oil fills the surface, so it scatters less light and the colour under it shows stronger.
    private const double OiledLightnessShare = 0.88, OiledChromaShare = 1.15;

    private static readonly FrozenDictionary<string, Ageing> BySpecies = LazyRows.Value
        .SelectMany(row => row.SpeciesKeys.Select(key => (key, row.Ageing)))
        .ToFrozenDictionary(pair => pair.key, pair => pair.Ageing, StringComparer.Ordinal);

    /// <summary>A colour under a clear oil.</summary>
    /// <param name="bare">The colour of the bare wood.</param>
    /// <returns>Darker by an eighth and stronger by a seventh. Estimate.</returns>
    public static LabColour Oiled(LabColour bare) => new(bare.L * OiledLightnessShare, bare.A * OiledChromaShare, bare.B * OiledChromaShare);

    /// <summary>The colour of bare heartwood after some years indoors, out of the sun.</summary>
    /// <param name="species">The wood.</param>
    /// <returns>Estimate: which way is common practice, no source; how far is a guess.</returns>
    public static LabColour Aged(Species species)
    {
        Ageing ageing = Find(species);
        return new LabColour(species.Colour.L + ageing.Lightness, species.Colour.A + ageing.Red, species.Colour.B + ageing.Yellow);
    }

    /// <summary>What the years do, in words: <c>darkens within weeks to a warm red brown</c>.</summary>
    /// <param name="species">The wood.</param>
    public static string AgedInWords(Species species) => Find(species).Words;

    private static Ageing Find(Species species)
    {
        ArgumentNullException.ThrowIfNull(species);
        return BySpecies[species.Key];
    }

    private sealed record Ageing(double Lightness, double Red, double Yellow, string Words);

    private static class LazyRows
    {
        internal static readonly ImmutableArray<(ImmutableArray<string> SpeciesKeys, Ageing Ageing)> Value =
        [
            .. EmbeddedTable.Read("Wood.ageing.csv").Select(row => (
                row.List("species"),
                new Ageing(row.RequiredNumber("lightness"), row.RequiredNumber("red"), row.RequiredNumber("yellow"), row.Required("words")))),
        ];
    }
}
