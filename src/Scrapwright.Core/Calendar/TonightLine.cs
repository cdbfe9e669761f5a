namespace Scrapwright.Core.Calendar;

/// <summary>One thing to do tonight: setting a station up, or a task.</summary>
/// <param name="Start">When it starts.</param>
/// <param name="End">When it is over.</param>
/// <param name="Title">What to do.</param>
/// <param name="Task">Id of the task; empty for setting up.</param>
public sealed record TonightLine(DateTimeOffset Start, DateTimeOffset End, string Title, string Task);
