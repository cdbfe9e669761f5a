namespace Scrapwright.Core.Calendar;

/// <summary>How much of a resource a task takes while it is worked at, and for how long it keeps it afterwards.</summary>
/// <param name="Resource">Id of the resource.</param>
/// <param name="Amount">How much; above zero, at most the capacity.</param>
/// <param name="HeldMinutes">After the task's end, without a hand on it: clamps hold on. [min], from zero</param>
public sealed record ScheduleNeed(string Resource, int Amount, int HeldMinutes = 0);
