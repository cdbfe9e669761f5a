namespace Scrapwright.Core.Wood;

/// <summary>Brings the name of a wood to the one spelling that is looked up: small letters only, so that case, hyphens, spaces and accents do not matter.</summary>
internal static class WoodName
{
    // Our own choice: no name in the table has half as many letters.
    internal const int MaxLength = 64;

    /// <summary>Writes the letters of <paramref name="text"/>; returns how many, or −1 when there are more than fit or a sign that no name has.</summary>
    internal static int Normalise(ReadOnlySpan<char> text, Span<char> letters)
    {
        int length = 0;
        foreach (char c in text)
        {
            char plain = Plain(c);
            if (plain == ' ')
            {
                continue;
            }

            if (plain == '\0' || length == letters.Length)
            {
                return -1;
            }

            letters[length++] = plain;
        }

        return length;
    }

    internal static string Normalise(string text)
    {
        Span<char> letters = stackalloc char[MaxLength];
        int length = Normalise(text, letters);
        return length < 0 ? throw new ArgumentException($"'{text}' is no name of a wood.", nameof(text)) : new string(letters[..length]);
    }

    /// <summary>The plurals people write: walnuts, cherries, ashes, beeches.</summary>
    internal static string Plural(string letters) => letters switch
    {
        [.., 's' or 'x'] or [.., 'c' or 's', 'h'] => letters + "es",
        [.., not ('a' or 'e' or 'o' or 'u'), 'y'] => letters[..^1] + "ies",
        _ => letters + "s",
    };

    private static char Plain(char c) => c switch
    {
        >= 'a' and <= 'z' => c,
        // Definition: small letters stand 32 places behind capital ones.
        >= 'A' and <= 'Z' => (char)(c + 32),
        ' ' or '-' or '_' or '.' or ',' or '\'' or '\t' or '(' or ')' or '\u2010' or '\u2011' or '\u2013' or '\u2019' or '\u00a0' => ' ',
        'ç' or 'Ç' => 'c',
        'á' or 'à' or 'â' or 'ã' or 'Á' => 'a',
        'é' or 'è' or 'ê' or 'É' => 'e',
        'í' or 'Í' => 'i',
        'ó' or 'ô' or 'õ' or 'Ó' => 'o',
        'ú' or 'ü' or 'Ú' => 'u',
        _ => '\0',
    };
}
