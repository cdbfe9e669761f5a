namespace Scrapwright.Planning.Cutting;

/// <summary>Lists every pattern that a solution of a given cost can hold.</summary>
/// <remarks>
/// By the prices of the bound, each pattern wastes price (its bar's less its pieces'), and a solution of cost z wastes z − bound in all; so a pattern that wastes more is in none.
/// Bars all alike: the same holds for length. Only full patterns are listed, those to which no piece can be added, since pieces may be cut once too often and left out.
/// </remarks>
internal sealed class BarListing
{
    private readonly BarSizes problem;
    private readonly BarBundle[] bundles;
    private readonly BarRest rest;
    private readonly int most;
    private readonly List<(BarPattern Pattern, int MostUses)> found = [];
    private readonly int[] counts;
    private long steps;

    private BarListing(BarSizes problem, BarPrices prices, int most)
    {
        this.problem = problem;
        this.most = most;
        bundles = BarBundle.Whole(problem, prices.Pieces);
        rest = new BarRest(bundles);
        counts = new int[bundles.Length];
    }

    /// <summary>All of them with how often each can be used, or null when they are too many.</summary>
    internal static List<(BarPattern Pattern, int MostUses)>? Find(BarSizes problem, BarPrices prices, long scale, long cost, int most)
    {
        var listing = new BarListing(problem, prices, most);
        var gap = (long)(((Int128)cost * scale) - prices.Sum);
        for (var stock = 0; stock < problem.Room.Length; stock++)
        {
            if (problem.Available[stock] == 0) continue;
            var waste = problem.Waste(cost);
            var least = (problem.Price[stock] * scale) + prices.Racks[stock] - gap;
            if (waste >= 0 && !listing.Go(0, stock, problem.Room[stock], 0, least, gap, waste)) return null;
        }

        return listing.found;
    }

    private bool Go(int next, int stock, long room, long worth, long least, long gap, long waste)
    {
        if (++steps > most * 400L) return false;
        if (worth + rest.Most(next, room) < least || room - rest.Size(next) > waste) return true;
        if (next == bundles.Length)
        {
            if (IsFull(room))
            {
                var pattern = new BarPattern(stock, [.. bundles.Select((b, i) => (b.Item, Count: counts[i])).Where(c => c.Count > 0).OrderBy(c => c.Item)]);
                var lost = gap - (worth - least);
                var uses = pattern.Counts.Max(c => (problem.Demands[c.Item] + c.Count - 1) / c.Count);
                found.Add((pattern, (int)Math.Min(uses, lost > 0 ? gap / lost : int.MaxValue)));
            }

            return found.Count <= most;
        }

        var bundle = bundles[next];
        var size = problem.Sizes[bundle.Item];
        var piece = bundle.Worth / bundle.Copies;
        for (var n = (int)Math.Min(bundle.Copies, room / size); n >= 0; n--)
        {
            counts[next] = n;
            if (!Go(next + 1, stock, room - (n * size), worth + (n * piece), least, gap, waste)) return false;
        }

        return true;
    }

    private bool IsFull(long room)
    {
        for (var i = 0; i < bundles.Length; i++)
        {
            if (counts[i] < bundles[i].Copies && problem.Sizes[bundles[i].Item] <= room) return false;
        }

        return true;
    }
}
