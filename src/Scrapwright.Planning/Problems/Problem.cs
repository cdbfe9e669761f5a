using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Problems;

/// <summary>A request worked out into offcuts with their patterns, glue-ups that may be made and runs of solid parts.</summary>
internal sealed record Problem
{
    internal required PlanRequest Request { get; init; }

    internal required ImmutableArray<Offcut> Offcuts { get; init; }

    internal required ImmutableArray<OffcutPattern> Patterns { get; init; }

    internal required ImmutableArray<GiftDesign> Designs { get; init; }

    internal required ImmutableArray<GiftDemand> Gifts { get; init; }

    internal required ImmutableArray<PanelCandidate> Panels { get; init; }

    internal required ImmutableArray<RunDemand> Runs { get; init; }

    internal Shop Shop => Request.Shop;
}
