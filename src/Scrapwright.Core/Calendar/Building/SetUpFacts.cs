namespace Scrapwright.Core.Calendar.Building;

/// <summary>A setting, with numbers of resources.</summary>
internal readonly record struct SetUpFacts(int Station, int Maker, int Minutes);
