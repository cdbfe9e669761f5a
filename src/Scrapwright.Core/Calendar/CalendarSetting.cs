namespace Scrapwright.Core.Calendar;

/// <summary>A setting of a station in its time.</summary>
/// <param name="Setting">The setting.</param>
/// <param name="Start">When setting up begins.</param>
/// <param name="Ready">When it is set up and the first task may begin.</param>
/// <param name="End">When the last task that needs it is over.</param>
public sealed record CalendarSetting(StationSetting Setting, DateTimeOffset Start, DateTimeOffset Ready, DateTimeOffset End);
