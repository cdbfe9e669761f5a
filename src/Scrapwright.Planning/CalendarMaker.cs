using Scrapwright.Core.Calendar;
using Scrapwright.Planning.Calendar;

namespace Scrapwright.Planning;

/// <summary>Makes calendars of plans: when to do what, so that every gift is ready by its day.</summary>
public static class CalendarMaker
{
    /// <summary>The best calendar found within the limits.</summary>
    /// <param name="request">The plan, the hours, from when on.</param>
    /// <param name="limits">When to stop.</param>
    /// <param name="progress">Told of every improvement; may be null.</param>
    /// <param name="cancellationToken">Ends the search; the best calendar so far is the outcome, or unfinished when there is none.</param>
    /// <exception cref="InvalidOperationException">The audit rejected the calendar: a fault of this program, never shown as a calendar.</exception>
    public static async Task<CalendarOutcome> MakeAsync(
        CalendarRequest request, PlanLimits limits, IProgress<ScheduleProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        switch (CalendarProblem.Make(request))
        {
            case CalendarMaking.Refused refused:
                return new CalendarOutcome.Impossible(refused.Reasons);
            case CalendarMaking.Made made:
                return CalendarOutcome.Of(made.Problem, await Scheduler.SolveAsync(made.Problem.Schedule, limits, progress, cancellationToken).ConfigureAwait(false));
            default:
                throw new InvalidOperationException("An answer of another kind.");
        }
    }
}
