using System.Collections.Immutable;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Core.Plans;

/// <summary>Weights that make one gift of a higher priority outweigh all gifts of lower priorities together.</summary>
public static class PriorityWeights
{
    /// <summary>Weight of each priority present: 1 for the lowest, and for each higher one 1 more than all lower gifts weigh together.</summary>
    /// <exception cref="OverflowException">More gifts and priorities than a 64-bit sum holds.</exception>
    public static ImmutableSortedDictionary<int, long> Of(ImmutableArray<Gift> gifts)
    {
        var weights = ImmutableSortedDictionary.CreateBuilder<int, long>();
        long below = 0;
        foreach (var group in gifts.GroupBy(g => g.Priority).OrderByDescending(g => g.Key))
        {
            var weight = below + 1;
            weights[group.Key] = weight;
            below += weight * group.Count();
        }

        return weights.ToImmutable();
    }
}
