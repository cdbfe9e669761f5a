namespace Scrapwright.Core.Calendar;

/// <summary>One task follows another.</summary>
/// <param name="Before">Id of the task that is done first.</param>
/// <param name="After">Id of the task that follows.</param>
/// <param name="LeastMinutes">From the end of the first to the start of the second at least: glue sets, oil soaks. [min], from zero</param>
/// <param name="MostMinutes">At most so long: oil has to be wiped off. Null for no limit. [min], not below the least</param>
public sealed record ScheduleLink(string Before, string After, int LeastMinutes = 0, int? MostMinutes = null);
