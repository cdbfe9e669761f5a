namespace Scrapwright.Core.Sheets;

/// <summary>One straight stroke of a hatch. <c>default</c> has no length.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
public readonly record struct Stroke(Spot From, Spot To);
