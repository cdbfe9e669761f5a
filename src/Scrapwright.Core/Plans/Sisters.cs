using System.Collections.Immutable;

namespace Scrapwright.Core.Plans;

/// <summary>Which strips of a glue-up are sisters, two layers of one stick opened like a book.</summary>
public static class Sisters
{
    /// <summary>For each strip the place of its sister, −1 for none. Sisters name each other.</summary>
    /// <param name="strips">The strips, lower edge first.</param>
    public static ImmutableArray<int> PlacesOf(ImmutableArray<Strip> strips) =>
    [
        .. strips.Index().Select(strip => strip.Item.Sister.Length == 0 ? -1 : strips.Index()
            .Where(other => other.Index != strip.Index && other.Item.Piece == strip.Item.Sister && other.Item.Sister == strip.Item.Piece)
            .Select(other => other.Index).DefaultIfEmpty(-1).First()),
    ];

    /// <summary>The letter of each strip's pair, the same on both sisters: A for the pair that lies nearest to the middle; empty for a strip without a sister.</summary>
    /// <param name="strips">The strips, lower edge first.</param>
    public static ImmutableArray<string> LettersOf(ImmutableArray<Strip> strips)
    {
        var sisters = PlacesOf(strips);
        var letters = new string[strips.Length];
        Array.Fill(letters, "");
        var next = 'A';
        for (var i = strips.Length - 1; i >= 0; i--)
        {
            if (sisters[i] > i)
            {
                letters[i] = letters[sisters[i]] = $"{next++}";
            }
        }

        return [.. letters];
    }

    /// <summary>Whether the two strips beside the middle are sisters.</summary>
    /// <param name="strips">The strips, lower edge first.</param>
    public static bool AreInTheMiddle(ImmutableArray<Strip> strips) =>
        strips.Length >= 2 && strips.Length % 2 == 0 && PlacesOf(strips)[(strips.Length / 2) - 1] == strips.Length / 2;
}
