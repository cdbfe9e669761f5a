namespace Scrapwright.Client.Api;

/// <summary>The workshop in a few figures.</summary>
/// <param name="Name">What it is called on every sheet; may be empty.</param>
/// <param name="Offcuts">Entries in the pile.</param>
/// <param name="Pieces">Single offcuts in the pile.</param>
/// <param name="Gifts">Gifts in the list.</param>
/// <param name="HasPlan">Whether there is a plan.</param>
/// <param name="PlanIsStale">Whether there is a plan that was made from other facts than the workshop now holds.</param>
public sealed record WorkshopSummary(string Name, int Offcuts, int Pieces, int Gifts, bool HasPlan, bool PlanIsStale);
