using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>One line of an evening: setting a station up, or tasks of one kind that run on without a break.</summary>
/// <param name="Start">When it starts.</param>
/// <param name="End">When it is over.</param>
/// <param name="Title">What to do, and for which gifts.</param>
/// <param name="Tasks">The tasks, in order of time; empty for setting up.</param>
public sealed record WorkLine(DateTimeOffset Start, DateTimeOffset End, string Title, ImmutableArray<CalendarTask> Tasks)
{
    /// <summary>True for setting up.</summary>
    public bool IsSetUp => Tasks.IsEmpty;

    /// <summary>Minutes of work in it. [min]</summary>
    public int Minutes => Tasks.Sum(t => t.Task.Minutes);

    /// <summary>The same without any reading of the maker's own times, by which readings are compared. [min]</summary>
    public int UsualMinutes => Tasks.Sum(t => t.Task.UsualMinutes ?? t.Task.Minutes);
}
