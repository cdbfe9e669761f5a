using Scrapwright.Core.Wood;

namespace Scrapwright.Client.Wood;

/// <summary>Screen colours of woods.</summary>
public static class WoodColours
{
    /// <summary>Colour of a species; grey for a key that is not in the table.</summary>
    public static string Of(string species) => Find(species)?.DisplayHex ?? "#8a8a8a";

    /// <summary>Colour for text that stands on the wood: near black on light woods, near white on dark ones.</summary>
    public static string Ink(string species) => IsLight(species) ? "#1b1410" : "#fffaf2";

    /// <summary>Colour for lines of grain: darker on light woods, lighter on dark ones.</summary>
    public static string GrainLine(string species) => IsLight(species) ? "#00000030" : "#ffffff24";

    /// <summary>Name of a species; the key itself when it is not in the table.</summary>
    public static string Name(string species) => Find(species)?.Name ?? species;

    private static bool IsLight(string species) => (Find(species)?.Colour.L ?? 55) >= 50;

    private static Species? Find(string species) =>
        SpeciesTable.All.FirstOrDefault(s => string.Equals(s.Key, species, StringComparison.Ordinal));
}
