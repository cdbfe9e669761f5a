using Scrapwright.Core.Milling;

namespace Scrapwright.Core.Plans.Chances;

/// <summary>
/// Chance that several sizes hold together. Sizes that share no draw are independent. Of those that do, the shared draws are integrated over numerically and the
/// others in closed form.
/// </summary>
/// <remarks>Draws are normal and independent. Source of the transformation: [GenzBretz] ch. 4; docs/science/chance.md has the sum.</remarks>
internal static class JointChance
{
    /// <summary>Chance that all demands hold, 0 to 1; absolute error below 1e-3.</summary>
    public static double Of(IEnumerable<Demand> demands)
    {
        Demand[] all = [.. demands];
        if (all.Any(d => d.Draws.IsEmpty && d.OverMm < 0))
        {
            return 0;
        }

        return Groups([.. all.Where(d => !d.Draws.IsEmpty)]).Aggregate(1.0, (chance, group) => chance * new DemandGroup(group).Chance());
    }

    /// <summary>Chance of one size alone.</summary>
    public static double Of(Demand demand) => demand.Draws.IsEmpty
        ? demand.OverMm >= 0 ? 1 : 0
        : Chance.NormalShare(demand.OverMm / Math.Sqrt(demand.Draws.GroupBy(d => d.Draw).Sum(g => Math.Pow(g.Sum(d => d.SpreadMm), 2))));

    /// <summary>Demands that hang together by their draws.</summary>
    private static IEnumerable<List<Demand>> Groups(Demand[] demands)
    {
        var groups = new List<(List<Demand> Demands, HashSet<int> Draws)>();
        foreach (var demand in demands)
        {
            var together = groups.Where(g => demand.Draws.Any(d => g.Draws.Contains(d.Draw))).ToList();
            groups.RemoveAll(together.Contains);
            groups.Add((
                [.. together.SelectMany(g => g.Demands), demand],
                [.. together.SelectMany(g => g.Draws), .. demand.Draws.Select(d => d.Draw)]));
        }

        return groups.Select(g => g.Demands);
    }
}
