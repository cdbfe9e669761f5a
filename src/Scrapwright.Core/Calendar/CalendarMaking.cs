using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>What came of turning a request for a calendar into a problem of fitting tasks into time.</summary>
public abstract record CalendarMaking
{
    private CalendarMaking()
    {
    }

    /// <summary>A problem that can be worked at.</summary>
    /// <param name="Problem">The problem.</param>
    public sealed record Made(CalendarProblem Problem) : CalendarMaking;

    /// <summary>It cannot be done, whatever the order.</summary>
    /// <param name="Reasons">Why; never empty.</param>
    public sealed record Refused(ImmutableArray<ScheduleReason> Reasons) : CalendarMaking;
}
