namespace Scrapwright.Planning.Cutting;

/// <summary>Best-fit decreasing: each piece, longest first, into the fullest bar that still holds it.</summary>
internal static class BarFit
{
    /// <summary>The patterns, one for each bar, or null when a piece finds no bar.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="perLength">Whether a new bar is the one cheapest for its length, else the cheapest one that holds the piece.</param>
    internal static List<BarPattern>? Find(BarSizes problem, bool perLength)
    {
        var left = (int[])problem.Available.Clone();
        var bars = new List<(int Stock, long Room, Dictionary<int, int> Counts)>();
        for (var item = 0; item < problem.Sizes.Length; item++)
        {
            for (var copy = 0; copy < problem.Demands[item]; copy++)
            {
                var size = problem.Sizes[item];
                var best = -1;
                for (var b = 0; b < bars.Count; b++)
                {
                    if (bars[b].Room >= size && (best < 0 || bars[b].Room < bars[best].Room)) best = b;
                }

                if (best < 0)
                {
                    var stock = NewBar(problem, left, size, perLength);
                    if (stock < 0) return null;
                    left[stock]--;
                    bars.Add((stock, problem.Room[stock], []));
                    best = bars.Count - 1;
                }

                bars[best].Counts[item] = bars[best].Counts.GetValueOrDefault(item) + 1;
                bars[best] = bars[best] with { Room = bars[best].Room - size };
            }
        }

        return [.. bars.Select(b => new BarPattern(Cheaper(problem, left, b.Stock, problem.Room[b.Stock] - b.Room), [.. b.Counts.OrderBy(c => c.Key).Select(c => (c.Key, c.Value))]))];
    }

    private static int NewBar(BarSizes problem, int[] left, long size, bool perLength) =>
        Enumerable.Range(0, problem.Room.Length).Where(s => left[s] > 0 && problem.Room[s] >= size)
            .OrderBy(s => perLength ? (double)problem.Price[s] / problem.Room[s] : problem.Price[s]).ThenByDescending(s => problem.Room[s]).ThenBy(s => s)
            .DefaultIfEmpty(-1).First();

    /// <summary>The cheapest stock that holds the load, given back for the one taken.</summary>
    private static int Cheaper(BarSizes problem, int[] left, int stock, long load)
    {
        var best = Enumerable.Range(0, problem.Room.Length).Where(s => problem.Room[s] >= load && (s == stock || left[s] > 0)).OrderBy(s => problem.Price[s]).ThenBy(s => s).First();
        if (best != stock)
        {
            left[best]--;
            left[stock]++;
        }

        return best;
    }
}
