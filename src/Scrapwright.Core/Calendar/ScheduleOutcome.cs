using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>What came of fitting tasks into time.</summary>
public abstract record ScheduleOutcome
{
    private ScheduleOutcome()
    {
    }

    /// <summary>A schedule that passed its audit.</summary>
    /// <param name="Schedule">The schedule.</param>
    public sealed record Scheduled(Schedule Schedule) : ScheduleOutcome;

    /// <summary>It cannot be done within the horizon.</summary>
    /// <param name="Reasons">What does not fit, each one sentence, most telling first; never empty.</param>
    public sealed record Impossible(ImmutableArray<ScheduleReason> Reasons) : ScheduleOutcome;

    /// <summary>Cancelled, or out of time, before there was a schedule.</summary>
    public sealed record Unfinished : ScheduleOutcome;
}
