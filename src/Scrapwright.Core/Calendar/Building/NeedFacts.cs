namespace Scrapwright.Core.Calendar.Building;

/// <summary>A need, with the number of its resource.</summary>
internal readonly record struct NeedFacts(int Resource, int Amount, int Held);
