namespace Scrapwright.Core.Calendar;

/// <summary>When a setting stands.</summary>
/// <param name="SetUp">Key of the setting.</param>
/// <param name="Start">First minute of setting up; tasks begin when that is over. [min]</param>
/// <param name="End">The minute at which the last of its tasks is over. [min]</param>
public sealed record ScheduledSetUp(string SetUp, int Start, int End);
