using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Designs;

/// <summary>The known word that is spelled most like an unknown one.</summary>
internal static class NearestWord
{
    private const int LongestCompared = 40;

    /// <summary>The word with the fewest edits, the first of equals; empty when there are no words.</summary>
    internal static string Of(string text, IEnumerable<string> words)
    {
        var start = text.Length <= LongestCompared ? text : text[..LongestCompared];
        return words.MinBy(word => Spelling.Distance(start, word)) ?? "";
    }
}
