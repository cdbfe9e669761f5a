namespace Scrapwright.Core.Measures;

/// <summary>Reads the many ways to write one character as one: full-width and typographic forms become plain ones, each in its place.</summary>
internal static class LengthCharacters
{
    /// <summary>The plain form, lower case; one character for one, so that positions stay true.</summary>
    public static char Fold(char c) => c switch
    {
        >= 'A' and <= 'Z' => (char)(c | 0x20),
        < '\u0080' => c,
        '\u00A0' or (>= '\u2000' and <= '\u200A') or '\u202F' or '\u205F' or '\u3000' => ' ',
        '″' or '“' or '”' or '‟' or '〃' or '〞' => '"',
        '′' or '‘' or '’' or '‛' or '´' => '\'',
        '⁄' or '∕' => '/',
        '−' or '‐' or '‑' or '–' => '-',
        'µ' or 'μ' => 'u',

        // The full-width forms stand in the order of ASCII.
        >= '\uFF01' and <= '\uFF5E' => Fold((char)(c - 0xFEE0)),
        _ => c,
    };

    /// <summary>The value of a single-character fraction such as ¾.</summary>
    public static bool TryGetFraction(char c, out int numerator, out int denominator)
    {
        (numerator, denominator) = c switch
        {
            '¼' => (1, 4),
            '½' => (1, 2),
            '¾' => (3, 4),
            '⅛' => (1, 8),
            '⅜' => (3, 8),
            '⅝' => (5, 8),
            '⅞' => (7, 8),
            '⅐' => (1, 7),
            '⅑' => (1, 9),
            '⅒' => (1, 10),
            '⅓' => (1, 3),
            '⅔' => (2, 3),
            '⅕' => (1, 5),
            '⅖' => (2, 5),
            '⅗' => (3, 5),
            '⅘' => (4, 5),
            '⅙' => (1, 6),
            '⅚' => (5, 6),
            _ => (0, 0),
        };
        return denominator != 0;
    }

    /// <summary>What to show of a text that was not understood: the word at a position, or the one character.</summary>
    public static string FoundAt(ReadOnlySpan<char> text, int position)
    {
        const int Longest = 20;
        if (position >= text.Length) return "";
        var end = position;
        while (end < text.Length && end - position < Longest && char.IsLetterOrDigit(text[end])) end++;
        if (end > position) return text[position..end].ToString();
        if (char.IsControl(text[position])) return $"U+{(int)text[position]:X4}";
        return text.Slice(position, char.IsSurrogatePair(text[position], position + 1 < text.Length ? text[position + 1] : ' ') ? 2 : 1).ToString();
    }
}
