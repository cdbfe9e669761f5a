namespace Scrapwright.Core.Calendar;

/// <summary>A task after which a delivery is ready.</summary>
/// <param name="Task">Id of the task.</param>
/// <param name="WaitMinutes">From its end until the thing may be handled: the finish dries. [min], from zero</param>
public sealed record ScheduleLast(string Task, int WaitMinutes = 0);
