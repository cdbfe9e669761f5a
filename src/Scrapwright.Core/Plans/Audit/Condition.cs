using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>A size that must suffice: what is expected to be over, and the works whose allowance may eat it.</summary>
/// <param name="Over">Expected size less the size needed.</param>
internal sealed record Condition(Length Over)
{
    /// <summary>Spread in millimetres of each work, by number; a work that counts several times has its multiple.</summary>
    public Dictionary<int, double> Works { get; } = [];

    /// <summary>One standard deviation of everything together. [mm]</summary>
    public double SpreadMm => Math.Sqrt(Works.Values.Sum(s => s * s));

    /// <summary>Adds a work.</summary>
    public Condition With(int work, double spreadMm)
    {
        if (spreadMm > 0)
        {
            Works[work] = Works.GetValueOrDefault(work) + spreadMm;
        }

        return this;
    }

    /// <summary>Adds the works of a strip.</summary>
    public Condition With(IEnumerable<(int Work, double SpreadMm)> works)
    {
        foreach (var (work, spread) in works)
        {
            With(work, spread);
        }

        return this;
    }

    /// <summary>Chance that it holds when the given works took so many deviations more than expected.</summary>
    /// <param name="known">Deviations by work.</param>
    public double Holds(Dictionary<int, double> known)
    {
        var over = Over.Millimetres;
        double open = 0;
        foreach (var (work, spread) in Works)
        {
            if (known.TryGetValue(work, out var deviations))
            {
                over -= spread * deviations;
            }
            else
            {
                open += spread * spread;
            }
        }

        return open > 0 ? Chance.NormalShare(over / Math.Sqrt(open)) : over >= 0 ? 1 : 0;
    }
}
