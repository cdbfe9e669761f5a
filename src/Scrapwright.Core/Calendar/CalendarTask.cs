namespace Scrapwright.Core.Calendar;

/// <summary>A task in its time.</summary>
/// <param name="Task">The task.</param>
/// <param name="Start">When it starts.</param>
/// <param name="End">When it is over.</param>
/// <param name="FreeAgain">When what it made may be worked on or handled: glue has cured, finish has dried; the end where nothing waits.</param>
public sealed record CalendarTask(WorkTask Task, DateTimeOffset Start, DateTimeOffset End, DateTimeOffset FreeAgain);
