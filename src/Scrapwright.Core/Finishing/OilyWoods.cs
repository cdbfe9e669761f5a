using System.Collections.Frozen;

namespace Scrapwright.Core.Finishing;

/// <summary>Woods whose own oils and resins keep glue off.</summary>
/// <remarks>Teak, the rosewoods and lignum vitae are named as hard to glue in [WoodHandbook] ch. 10, from memory; the others are common practice, no source.</remarks>
public static class OilyWoods
{
    private static readonly FrozenSet<string> Keys = new[]
    {
        "teak", "brazilian-rosewood", "indian-rosewood", "iroko", "goncalo-alves", "ipe",
    }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    // Kinds the species table may not have, by the words people write.
    private static readonly string[] Words =
        ["teak", "rosewood", "cocobolo", "lignum", "bocote", "olive", "iroko", "ipe", "kingwood", "ziricote", "blackwood, african", "african blackwood"];

    /// <summary>Whether a wood counts as oily.</summary>
    /// <param name="species">Key or name of the species; any text.</param>
    public static bool IsOily(string species)
    {
        ArgumentNullException.ThrowIfNull(species);
        return Keys.Contains(species.Trim()) || Words.Any(word => HasWord(species, word));
    }

    // As a word of its own: "ipe" is not in "stripe".
    private static bool HasWord(string text, string word)
    {
        for (var at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase); at >= 0; at = text.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            var end = at + word.Length;
            if ((at == 0 || !char.IsLetter(text[at - 1])) && (end == text.Length || !char.IsLetter(text[end]))) return true;
        }

        return false;
    }
}
