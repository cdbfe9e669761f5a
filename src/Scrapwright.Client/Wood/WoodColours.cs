using System.Collections.Frozen;
using Scrapwright.Core.Wood;

namespace Scrapwright.Client.Wood;

/// <summary>Screen colours of woods. Worked out once: a plan asks for them thousands of times.</summary>
public static class WoodColours
{
    private static readonly FrozenDictionary<string, (string Name, string Hex, bool IsLight)> Known =
        SpeciesTable.All.ToFrozenDictionary(s => s.Key, s => (s.Name, s.DisplayHex, s.Colour.L >= 50), StringComparer.Ordinal);

    /// <summary>Colour of a species; grey for a key that is not in the table.</summary>
    public static string Of(string species) => Known.TryGetValue(species, out var wood) ? wood.Hex : "#8a8a8a";

    /// <summary>Colour for text that stands on the wood: near black on light woods, near white on dark ones.</summary>
    public static string Ink(string species) => IsLight(species) ? "#1b1410" : "#fffaf2";

    /// <summary>Colour for lines of grain: darker on light woods, lighter on dark ones.</summary>
    public static string GrainLine(string species) => IsLight(species) ? "#00000030" : "#ffffff24";

    /// <summary>Name of a species; the key itself when it is not in the table.</summary>
    public static string Name(string species) => Known.TryGetValue(species, out var wood) ? wood.Name : species;

    private static bool IsLight(string species) => !Known.TryGetValue(species, out var wood) || wood.IsLight;
}
