namespace Scrapwright.Core.Pile;

/// <summary>What may be written on the wood.</summary>
public static class PileLabels
{
    /// <summary>Most characters in a label.</summary>
    public const int LongestLabel = 12;

    /// <summary>Whether a text can be a label: 1 to 12 letters a to z, digits or hyphens, at least one of them no hyphen.</summary>
    /// <param name="text">Any text.</param>
    public static bool IsValid(ReadOnlySpan<char> text)
    {
        if (text.Length is 0 or > LongestLabel || text.IndexOfAnyExcept('-') < 0) return false;
        foreach (var c in text)
        {
            if (!char.IsAsciiLetterOrDigit(c) && c != '-') return false;
        }

        return true;
    }

    /// <summary>The labels of the single pieces of an offcut, as <see cref="Offcut.Pieces"/> gives them, and its own. Case does not tell two labels apart.</summary>
    /// <param name="offcut">One entry of the pile.</param>
    public static IEnumerable<string> Claimed(Offcut offcut)
    {
        ArgumentNullException.ThrowIfNull(offcut);
        return offcut.Count <= 1 ? [offcut.Label] : offcut.Pieces().Select(piece => piece.Label).Prepend(offcut.Label);
    }
}
