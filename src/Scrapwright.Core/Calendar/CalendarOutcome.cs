using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>What came of asking for a calendar.</summary>
public abstract record CalendarOutcome
{
    private CalendarOutcome()
    {
    }

    /// <summary>A calendar that passed its audit. A gift may be late in it.</summary>
    /// <param name="Calendar">The calendar.</param>
    public sealed record Dated(WorkCalendar Calendar) : CalendarOutcome;

    /// <summary>The work does not fit into the time there is.</summary>
    /// <param name="Reasons">What does not fit, in words of the shop, most telling first; never empty.</param>
    public sealed record Impossible(ImmutableArray<ScheduleReason> Reasons) : CalendarOutcome;

    /// <summary>Cancelled, or out of time, before there was a calendar.</summary>
    public sealed record Unfinished : CalendarOutcome;

    /// <summary>The outcome in words of the shop.</summary>
    /// <param name="problem">What was to be fitted.</param>
    /// <param name="outcome">What came of it.</param>
    /// <exception cref="ArgumentException">The schedule is of another problem.</exception>
    public static CalendarOutcome Of(CalendarProblem problem, ScheduleOutcome outcome)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return outcome switch
        {
            ScheduleOutcome.Scheduled scheduled => new Dated(WorkCalendar.Of(problem, scheduled.Schedule)),
            ScheduleOutcome.Impossible impossible => new Impossible([.. impossible.Reasons.Select(r => r with { Where = problem.Work.Tasks.FirstOrDefault(t => t.Id == r.Where)?.Title ?? r.Where })]),
            ScheduleOutcome.Unfinished => new Unfinished(),
            _ => throw new ArgumentOutOfRangeException(nameof(outcome), outcome, "An outcome of another kind."),
        };
    }
}
