namespace Scrapwright.Planning.Cutting;

/// <summary>One way to cut a bar of one stock.</summary>
/// <param name="Stock">Index of the stock.</param>
/// <param name="Counts">Items that occur and how many of each, by falling size.</param>
internal sealed record BarPattern(int Stock, (int Item, int Count)[] Counts)
{
    /// <summary>Equal for patterns of the same stock and pieces.</summary>
    internal string Key => Stock + ":" + string.Join(',', Counts.Select(c => $"{c.Item}x{c.Count}"));

    /// <summary>How many of an item.</summary>
    internal int CountOf(int item)
    {
        foreach (var (i, count) in Counts)
        {
            if (i == item) return count;
        }

        return 0;
    }
}
