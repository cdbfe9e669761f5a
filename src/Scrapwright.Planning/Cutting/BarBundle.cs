namespace Scrapwright.Planning.Cutting;

/// <summary>Copies of one item taken together.</summary>
/// <param name="Item">Index of the item.</param>
/// <param name="Copies">How many copies.</param>
/// <param name="Size">Size of all of them.</param>
/// <param name="Worth">Worth of all of them.</param>
internal readonly record struct BarBundle(int Item, int Copies, long Size, long Worth)
{
    /// <summary>Copies of each item of some worth in bundles of 1, 2, 4 …, so that every count up to the demand is a sum of bundles; best worth per size first.</summary>
    internal static BarBundle[] Doubling(BarSizes problem, long[] worth)
    {
        var bundles = new List<BarBundle>();
        for (var i = 0; i < worth.Length; i++)
        {
            if (worth[i] <= 0) continue;
            var left = MostCopies(problem, i);
            for (var copies = 1; left > 0; copies *= 2)
            {
                var taken = Math.Min(copies, left);
                bundles.Add(Of(problem, worth, i, taken));
                left -= taken;
            }
        }

        return Ordered(bundles);
    }

    /// <summary>All copies of each item in one bundle; best worth per size first.</summary>
    internal static BarBundle[] Whole(BarSizes problem, long[] worth) =>
        Ordered(Enumerable.Range(0, worth.Length).Where(i => MostCopies(problem, i) > 0).Select(i => Of(problem, worth, i, MostCopies(problem, i))));

    private static int MostCopies(BarSizes problem, int item) => (int)Math.Min(problem.Demands[item], problem.Room.Max() / problem.Sizes[item]);

    private static BarBundle Of(BarSizes problem, long[] worth, int item, int copies) => new(item, copies, problem.Sizes[item] * copies, worth[item] * copies);

    private static BarBundle[] Ordered(IEnumerable<BarBundle> bundles) =>
        [.. bundles.OrderByDescending(b => (double)b.Worth / b.Size).ThenBy(b => b.Item).ThenByDescending(b => b.Copies)];
}
