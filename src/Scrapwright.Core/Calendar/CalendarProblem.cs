using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Calendar;

/// <summary>The work of a plan and the hours of a shop, as a problem of fitting tasks into time, and what its numbers mean.</summary>
public sealed record CalendarProblem
{
    /// <summary>Id of the resource that stands for the hands there are.</summary>
    public const string Maker = "maker";

    /// <summary>So much slack a gift with a date should have. [d] Our own choice: in a week there is time to make up for an evening that falls out.</summary>
    public const int SlackDays = 7;

    /// <summary>What it was made from.</summary>
    public required CalendarRequest Request { get; init; }

    /// <summary>The work of the plan, done or not.</summary>
    public required WorkTasks Work { get; init; }

    /// <summary>The windows, and what minutes mean.</summary>
    public required WorkWindows Windows { get; init; }

    /// <summary>What is to be fitted into time: the tasks that are not done. Of those that are, only what still dries or is held stands in it, under names that begin with <c>done/</c>.</summary>
    public required ScheduleProblem Schedule { get; init; }

    /// <summary>The problem of a request, or why there is no way.</summary>
    /// <param name="request">The request.</param>
    /// <exception cref="ArgumentOutOfRangeException">Days out of range.</exception>
    public static CalendarMaking Make(CalendarRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return ShopZones.Find(request.Hours.TimeZone, request.HomeZone) is { } zone
            ? new CalendarProblemMaker(request, WorkWindows.Of(request.Hours, zone, request.Start, request.Days), PlanIndex.Of(request.Plan)).Make()
            : new CalendarMaking.Refused([new("time zone", request.Hours.TimeZone, "a name of the IANA database that this machine knows, such as Europe/Dublin")]);
    }
}
