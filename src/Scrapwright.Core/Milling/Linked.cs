namespace Scrapwright.Core.Milling;

/// <summary>Sorts items into groups that have nothing in common with one another.</summary>
internal static class Linked
{
    /// <summary>Groups in which every item is linked to the others by keys, directly or through further items.</summary>
    public static List<List<T>> Groups<T>(IEnumerable<T> items, Func<T, IEnumerable<string>> keysOf)
    {
        var groups = new List<(List<T> Items, HashSet<string> Keys)>();
        foreach (var item in items)
        {
            var keys = keysOf(item).ToHashSet(StringComparer.Ordinal);
            var touched = groups.Where(g => g.Keys.Overlaps(keys)).ToList();
            groups.RemoveAll(touched.Contains);
            groups.Add(([.. touched.SelectMany(g => g.Items), item], [.. touched.SelectMany(g => g.Keys), .. keys]));
        }

        return [.. groups.Select(g => g.Items)];
    }
}
