namespace Scrapwright.Planning.Cutting;

/// <summary>The places along one side where a cut can be: all sums of part sizes that fit, each part as often as it is wanted.</summary>
/// <remarks>Enough for a best layout: every other one can be pushed together until its cuts are at such places. Source: [Herz1972].</remarks>
internal sealed class BoardPlaces
{
    private readonly int[] below;

    private BoardPlaces(long[] marks)
    {
        Marks = marks;
        below = new int[marks.Length * marks.Length];
        for (var i = 0; i < marks.Length; i++)
        {
            var at = i;
            for (var j = 0; j <= i; j++)
            {
                while (marks[at] > marks[i] - marks[j]) at--;
                below[(i * marks.Length) + j] = at;
            }
        }
    }

    /// <summary>The places, rising, from zero.</summary>
    internal long[] Marks { get; }

    internal int Count => Marks.Length;

    /// <summary>The places, or null when there are more than <paramref name="most"/>.</summary>
    internal static BoardPlaces? Find(IEnumerable<(long Size, long Count)> sizes, long room, int most)
    {
        var marks = new SortedSet<long> { 0 };
        foreach (var (size, count) in sizes.Where(s => s.Size <= room).GroupBy(s => s.Size).Select(g => (g.Key, g.Sum(s => s.Count))).OrderByDescending(s => s.Key))
        {
            var fresh = marks.ToList();
            for (var copy = 0; copy < Math.Min(count, room / size) && fresh.Count > 0; copy++)
            {
                fresh = [.. fresh.Select(m => m + size).Where(m => m <= room && !marks.Contains(m))];
                marks.UnionWith(fresh);
            }

            if (marks.Count > most) return null;
        }

        return new BoardPlaces([.. marks]);
    }

    /// <summary>The last place not beyond the stretch from place <paramref name="from"/> to place <paramref name="to"/>.</summary>
    internal int Between(int from, int to) => below[(to * Marks.Length) + from];

    /// <summary>The row of <see cref="Between"/> for one end.</summary>
    internal ReadOnlySpan<int> BetweenRow(int to) => below.AsSpan(to * Marks.Length, to + 1);

    /// <summary>The last place at or before a mark.</summary>
    internal int AtOrBefore(long mark)
    {
        var at = Array.BinarySearch(Marks, mark);
        return at >= 0 ? at : ~at - 1;
    }

    /// <summary>The place exactly there, or -1.</summary>
    internal int At(long mark) => Math.Max(-1, Array.BinarySearch(Marks, mark));
}
