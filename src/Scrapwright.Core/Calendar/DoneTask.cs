namespace Scrapwright.Core.Calendar;

/// <summary>A task that is done.</summary>
/// <param name="Task">Id of the task.</param>
/// <param name="End">When it was over: glue sets and finish dries from then on.</param>
public sealed record DoneTask(string Task, DateTimeOffset End);
