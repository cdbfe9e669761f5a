using Scrapwright.Core.Gifts;

namespace Scrapwright.Core.Plans.Ideas;

/// <summary>One gift that somebody has not had.</summary>
/// <param name="Gift">The gift, ready for the list.</param>
/// <param name="Title">What it is, in the shop's unit: <c>4 striped squares, 4 in, in walnut and hard maple</c>.</param>
/// <param name="Woods">The woods of it that they did not have it in: <c>walnut and hard maple</c>; empty for a design they never had.</param>
public sealed record AgainChoice(Gift Gift, string Title, string Woods)
{
    /// <summary>True when they never had the design; false when they had it in other woods only.</summary>
    public bool IsNewDesign => Woods.Length == 0;
}
