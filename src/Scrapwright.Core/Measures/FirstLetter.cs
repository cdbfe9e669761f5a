namespace Scrapwright.Core.Measures;

/// <summary>Turns words into the beginning of a sentence, or into a part of one. The rest of the text stays as it is.</summary>
public static class FirstLetter
{
    /// <summary>The text with a large first letter: <c>Make it</c>; empty stays empty.</summary>
    /// <param name="text">The text.</param>
    public static string Large(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
    }

    /// <summary>The text with a small first letter: <c>stand with U-shaped sides</c>; empty stays empty.</summary>
    /// <param name="text">The text.</param>
    public static string Small(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length == 0 ? text : char.ToLowerInvariant(text[0]) + text[1..];
    }
}
