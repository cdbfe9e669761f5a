using Scrapwright.Core.Milling;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>
/// Chance that all conditions hold: every work that counts in more than one is tried at evenly spread deviations, the others are worked out in closed form.
/// Another way than the planner's, with other points.
/// </summary>
internal static class ConditionSet
{
    private const int Trials = 4096;

    /// <summary>A condition this many deviations over always holds: the tail is below 1e-9.</summary>
    private const double Certain = 6;

    /// <summary>The chance, 0 to 1; exact to about 2e-3.</summary>
    public static double Chance(IEnumerable<Condition> all)
    {
        Condition[] conditions = [.. all.Where(c => c.Over.Millimetres <= Certain * c.SpreadMm && !(c.SpreadMm <= 0 && !c.Over.IsNegative))];
        int[] shared = [.. conditions.SelectMany(c => c.Works.Keys).GroupBy(w => w).Where(g => g.Count() > 1).Select(g => g.Key).Order()];
        Condition[] alone = [.. conditions.Where(c => !c.Works.Keys.Any(shared.Contains))];
        Condition[] together = [.. conditions.Except(alone)];
        var known = new Dictionary<int, double>();
        var chance = alone.Aggregate(1.0, (product, c) => product * c.Holds(known));
        return together.Length == 0 ? chance : chance * Mean(together, shared);
    }

    private static double Mean(Condition[] conditions, int[] shared)
    {
        // Steps of the generalised golden ratio: the root of x^(d+1) = x + 1. Fills the cube evenly.
        var ratio = 2.0;
        for (var i = 0; i < 60; i++)
        {
            ratio = Math.Pow(1 + ratio, 1.0 / (shared.Length + 1));
        }

        double sum = 0;
        var known = new Dictionary<int, double>();
        for (var trial = 1; trial <= Trials; trial++)
        {
            for (var i = 0; i < shared.Length; i++)
            {
                var place = (0.5 + (trial * Math.Pow(ratio, -(i + 1)))) % 1;
                known[shared[i]] = Milling.Chance.DeviationsForRisk(Math.Clamp(place, 1e-7, 1 - 1e-7) * 1000);
            }

            var holds = 1.0;
            for (var i = 0; i < conditions.Length && holds > 0; i++)
            {
                holds *= conditions[i].Holds(known);
            }

            sum += holds;
        }

        return sum / Trials;
    }
}
