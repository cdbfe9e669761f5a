namespace Scrapwright.Core.Wood;

/// <summary>How far apart two spellings are.</summary>
public static class Spelling
{
    /// <summary>Fewest single-letter insertions, deletions, changes and swaps of neighbours that turn one text into the other, no part edited twice.</summary>
    /// <param name="left">One spelling.</param>
    /// <param name="right">The other.</param>
    /// <returns>Number of edits, 0 when equal. Symmetric.</returns>
    /// <remarks>The restricted Damerau–Levenshtein distance (optimal string alignment). Source: [Damerau1964] for the four kinds of slip.</remarks>
    public static int Distance(ReadOnlySpan<char> left, ReadOnlySpan<char> right)
    {
        Span<int> beforeLast = right.Length < 128 ? stackalloc int[right.Length + 1] : new int[right.Length + 1];
        Span<int> last = right.Length < 128 ? stackalloc int[right.Length + 1] : new int[right.Length + 1];
        Span<int> current = right.Length < 128 ? stackalloc int[right.Length + 1] : new int[right.Length + 1];
        for (int j = 0; j <= right.Length; j++)
        {
            last[j] = j;
        }

        for (int i = 1; i <= left.Length; i++)
        {
            current[0] = i;
            for (int j = 1; j <= right.Length; j++)
            {
                int change = last[j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1);
                int best = Math.Min(change, Math.Min(last[j], current[j - 1]) + 1);
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                {
                    best = Math.Min(best, beforeLast[j - 2] + 1);
                }

                current[j] = best;
            }

            Span<int> spare = beforeLast;
            beforeLast = last;
            last = current;
            current = spare;
        }

        return last[right.Length];
    }
}
