using System.Collections.Immutable;
using Scrapwright.Core.Plans;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Building;

/// <summary>The gifts that are not made, with what is missing.</summary>
internal static class UnmadeGifts
{
    internal static ImmutableArray<UnmadeGift> Of(Problem problem, ImmutableArray<MadeGift> made, ImmutableArray<Leftover> leftovers)
    {
        var labels = made.Select(m => m.Gift).ToHashSet();
        return
        [
            .. problem.Designs.Where(d => !labels.Contains(d.Gift.Label))
                .Select(d => new UnmadeGift(d.Gift.Label, Shortages.For(d, leftovers, problem.Request))),
        ];
    }
}
