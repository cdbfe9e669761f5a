using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar;

/// <summary>What a station is set to for all tasks of one kind: fence and blade, glue and clamps laid out.</summary>
/// <param name="Key">Unique name: the operation, and the finish where there is one.</param>
/// <param name="Title">What to set up, in words of the shop.</param>
/// <param name="Station">The station.</param>
/// <param name="Operation">The kind of work.</param>
/// <param name="Minutes">Setting up and clearing away, once a window. [min], from zero; from the shop's times</param>
public sealed record StationSetting(string Key, string Title, Station Station, Operation Operation, int Minutes);
