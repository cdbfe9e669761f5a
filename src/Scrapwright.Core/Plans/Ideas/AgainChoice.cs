using Scrapwright.Core.Gifts;

namespace Scrapwright.Core.Plans.Ideas;

/// <summary>One gift that somebody has not had.</summary>
/// <param name="Gift">The gift, ready for the list.</param>
/// <param name="Title">What it is, in the shop's unit: <c>4 striped squares, 4 in, in walnut and hard maple</c>.</param>
/// <param name="IsNewDesign">True when they never had the design; false when they had it in other woods only.</param>
public sealed record AgainChoice(Gift Gift, string Title, bool IsNewDesign);
