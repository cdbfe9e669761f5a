namespace Scrapwright.Core.Calendar;

/// <summary>A stretch of time in which somebody works.</summary>
/// <param name="Start">First minute. [min]</param>
/// <param name="End">The minute at which it is over; above the start. [min]</param>
public readonly record struct ScheduleWindow(int Start, int End)
{
    /// <summary>How long it is. [min]</summary>
    public int Minutes => End - Start;

    /// <summary>True when something lies in it from start to end.</summary>
    /// <param name="start">Where that starts. [min]</param>
    /// <param name="end">Where it ends. [min]</param>
    public bool Holds(int start, int end) => start >= Start && end <= End;
}
