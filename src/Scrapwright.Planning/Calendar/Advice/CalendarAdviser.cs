using Scrapwright.Core.Calendar;

namespace Scrapwright.Planning.Calendar.Advice;

/// <summary>Says what holds a calendar up, and what could be done when time is short, by making it once more with one thing otherwise. Changes nothing by itself.</summary>
public static class CalendarAdviser
{
    /// <summary>What would help. The search runs on a thread of its own.</summary>
    /// <param name="request">What the calendar was made from.</param>
    /// <param name="calendar">The calendar.</param>
    /// <param name="limits">When to stop; <see cref="PlanLimits.Seconds"/> counts for everything together, and what there is no time for is named.</param>
    /// <param name="progress">Told of what is being tried, in words; may be null.</param>
    /// <param name="cancellationToken">Ends it early with what is known.</param>
    public static Task<CalendarWhy> WhyAsync(CalendarRequest request, WorkCalendar calendar, PlanLimits limits, IProgress<string>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(limits);
        return Task.Run(() => new WhyMaker(request, calendar, limits, progress, cancellationToken).MakeAsync(), CancellationToken.None);
    }
}
