namespace Scrapwright.Core.Calendar;

/// <summary>A task that the maker wants at a certain time.</summary>
/// <param name="Task">Id of the task.</param>
/// <param name="Start">When it starts.</param>
public sealed record PinnedTask(string Task, DateTimeOffset Start);
