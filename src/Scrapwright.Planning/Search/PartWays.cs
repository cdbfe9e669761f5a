using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <summary>A panel part of a gift with the ways to get its blanks: each way is a number of glue-ups of each mode, none of which could be left out.</summary>
/// <param name="Part">The part.</param>
/// <param name="Modes">One glue-up of each mode, standing for all alike.</param>
/// <param name="Ways">For each way, how many glue-ups of each mode.</param>
internal sealed record PartWays(Part Part, ImmutableArray<PanelCandidate> Modes, ImmutableArray<ImmutableArray<int>> Ways)
{
    /// <summary>The panel parts of a gift.</summary>
    internal static ImmutableArray<PartWays> Of(Problem problem, GiftDemand gift)
    {
        var found = ImmutableArray.CreateBuilder<PartWays>();
        foreach (var part in gift.Product.Parts.Where(p => p.Kind == PartKind.Panel && problem.StillNeeded(gift, p) > 0))
        {
            ImmutableArray<PanelCandidate> modes = [.. problem.Panels.Where(p => p.GiftIndex == gift.Index && p.Slot == 0 && p.Done is null && !p.IsShared && p.Part.Key == part.Key)];
            found.Add(new PartWays(part, modes, WaysFor([.. modes.Select(m => m.Yield)], problem.StillNeeded(gift, part))));
        }

        return found.ToImmutable();
    }

    private static ImmutableArray<ImmutableArray<int>> WaysFor(ImmutableArray<int> yields, int wanted)
    {
        var ways = ImmutableArray.CreateBuilder<ImmutableArray<int>>();
        Extend([]);
        return ways.ToImmutable();

        void Extend(ImmutableArray<int> counts)
        {
            var sum = counts.Zip(yields).Sum(p => p.First * p.Second);
            if (sum >= wanted)
            {
                ImmutableArray<int> way = [.. counts, .. Enumerable.Repeat(0, yields.Length - counts.Length)];
                if (!way.Zip(yields).Any(p => p.First > 0 && sum - p.Second >= wanted))
                {
                    ways.Add(way);
                }
            }
            else if (counts.Length < yields.Length)
            {
                for (var count = 0; count == 0 || sum + ((count - 1) * yields[counts.Length]) < wanted; count++)
                {
                    Extend(counts.Add(count));
                }
            }
        }
    }
}
