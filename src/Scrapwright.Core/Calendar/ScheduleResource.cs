namespace Scrapwright.Core.Calendar;

/// <summary>Something that tasks need and of which there is only so much: makers, a station, clamps that reach.</summary>
/// <param name="Id">Unique name.</param>
/// <param name="Capacity">How much of it there is at any time; above zero.</param>
public sealed record ScheduleResource(string Id, int Capacity);
