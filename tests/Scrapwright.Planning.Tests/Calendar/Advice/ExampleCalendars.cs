using System.Globalization;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Plans;
using Scrapwright.Files;
using Scrapwright.Planning.Calendar.Advice;

namespace Scrapwright.Planning.Tests.Calendar.Advice;

/// <summary>Calendars of a plan for the first gifts of the example: one with time enough and one begun too late, each with what would help; made once for all tests that read them.</summary>
public sealed class ExampleCalendars : IAsyncLifetime
{
    internal static readonly PlanLimits Quick = new() { Seconds = 2, Deterministic = true };

    internal Plan Plan { get; private set; } = null!;

    internal WorkCalendar Early { get; private set; } = null!;

    internal Lazy<CalendarWhy> EarlyWhy { get; private set; } = null!;

    internal WorkCalendar Late { get; private set; } = null!;

    internal Lazy<CalendarWhy> LateWhy { get; private set; } = null!;

    internal CalendarRequest EarlyRequest => Request("2027-05-03T12:00Z");

    internal CalendarRequest LateRequest => Request("2027-06-05T12:00Z");

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        Plan = Assert.IsType<PlanOutcome.Planned>(await Planner.PlanAsync(ExampleWorkshop.Request with { Gifts = ExampleWorkshop.Request.Gifts[..3] }, Quick with { Seconds = 1 })).Plan;
        (Early, Late) = (await CalendarAsync(EarlyRequest), await CalendarAsync(LateRequest));
        EarlyWhy = new(() => CalendarAdviser.WhyAsync(EarlyRequest, Early, Quick with { Seconds = 6 }).GetAwaiter().GetResult());
        LateWhy = new(() => CalendarAdviser.WhyAsync(LateRequest, Late, Quick with { Seconds = 6 }).GetAwaiter().GetResult());
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => ValueTask.CompletedTask;

    internal static async Task<WorkCalendar> CalendarAsync(CalendarRequest request) => Assert.IsType<CalendarOutcome.Dated>(await CalendarMaker.MakeAsync(request, Quick)).Calendar;

    private CalendarRequest Request(string start) => new()
    {
        Plan = Plan,
        Hours = ExampleWorkshop.Hours,
        HomeZone = TimeZoneInfo.Utc,
        Start = DateTimeOffset.Parse(start, CultureInfo.InvariantCulture),
        Days = 120,
    };
}
