namespace Scrapwright.Core.Plans;

/// <summary>One difference between two plans.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Text">In the maker's words, without a full stop.</param>
public sealed record PlanChange(ChangeKind Kind, string Text);
