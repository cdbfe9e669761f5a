namespace Scrapwright.Core.Calendar;

/// <summary>
/// A setting of a station: fence and blade for one operation, glue and clamps laid out. It is set once for all tasks of a window that need it, needs a maker meanwhile, and
/// while it stands the station has no other setting. It is set at most once in a window, and tasks of one setting have the same hours.
/// </summary>
/// <param name="Key">Unique name.</param>
/// <param name="Station">Id of the resource that is set; two settings of it never stand at the same time.</param>
/// <param name="Maker">Id of the resource whose hand sets it.</param>
/// <param name="Minutes">Setting up and clearing away. [min], from zero</param>
public sealed record ScheduleSetUp(string Key, string Station, string Maker, int Minutes);
