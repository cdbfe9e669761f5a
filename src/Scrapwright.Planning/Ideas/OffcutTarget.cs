using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Ideas;

/// <summary>A part that an offcut might serve.</summary>
/// <param name="Request">The workshop with its gift.</param>
/// <param name="Gift">The gift.</param>
/// <param name="Part">Key of the panel part; null for a run of solid parts.</param>
/// <param name="Run">Its run; null for a panel part.</param>
/// <param name="PartTitle">What the part is called.</param>
/// <param name="New">The gift as it would come on the list; null when it is on it.</param>
internal sealed record OffcutTarget(PlanRequest Request, GiftDemand Gift, string? Part, RunDemand? Run, string PartTitle, Gift? New)
{
    internal string Title => $"{PartTitle} of {(New is null ? Gift.Gift.Label : Gift.Product.Summary)}";
}
