namespace Scrapwright.Core.Calendar;

/// <summary>One level of what a schedule is worth; all count the less the better.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Value">What this schedule has.</param>
/// <param name="Bound">No schedule with the values of the levels before has less.</param>
/// <param name="Priority">Of lateness and slack: which deliveries, those with this number. Null for every other level.</param>
public sealed record ScheduleLevel(ScheduleLevelKind Kind, long Value, long Bound, int? Priority = null)
{
    /// <summary>True when no better value is possible.</summary>
    public bool IsProven => Value == Bound;
}
