namespace Scrapwright.Core.Calendar;

/// <summary>The clock on the wall is put forward or back.</summary>
/// <param name="Minute">The first minute that has the new difference, counted from the start of a calendar. [min]</param>
/// <param name="OffsetMinutes">The difference from UTC from then on. [min]</param>
public sealed record ClockChange(int Minute, int OffsetMinutes);
