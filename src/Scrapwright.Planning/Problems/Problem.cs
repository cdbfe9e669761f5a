using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Problems;

/// <summary>A request worked out into offcuts with their patterns, glue-ups that may be made and runs of solid parts.</summary>
internal sealed record Problem
{
    private Grid? lengths;

    internal required PlanRequest Request { get; init; }

    internal required ImmutableArray<Offcut> Offcuts { get; init; }

    internal required ImmutableArray<OffcutPattern> Patterns { get; init; }

    internal required ImmutableArray<GiftDesign> Designs { get; init; }

    internal required ImmutableArray<GiftDemand> Gifts { get; init; }

    internal required ImmutableArray<PanelCandidate> Panels { get; init; }

    internal required ImmutableArray<RunDemand> Runs { get; init; }

    internal Shop Shop => Request.Shop;

    /// <summary>Grid on which every length along the grain is exact where that can be.</summary>
    internal Grid Lengths => lengths ??= Grid.For(
    [
        Shop.TableSaw.Kerf, .. Patterns.SelectMany(p => p.Runs).Select(r => r.Length), .. Panels.Select(p => p.Needs.Overlap), .. Runs.Select(r => r.Needs.Length),
    ]);
}
