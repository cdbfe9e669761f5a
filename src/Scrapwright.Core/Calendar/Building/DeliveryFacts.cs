namespace Scrapwright.Core.Calendar.Building;

/// <summary>A delivery, with numbers of tasks.</summary>
internal readonly record struct DeliveryFacts((int Task, int Wait)[] Last, int? Due, int Priority);
