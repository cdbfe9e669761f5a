namespace Scrapwright.Core.Calendar;

/// <summary>When a task is done.</summary>
/// <param name="Task">Id of the task.</param>
/// <param name="Start">First minute. [min]</param>
/// <param name="End">The minute at which it is over. [min]</param>
public sealed record ScheduledTask(string Task, int Start, int End);
