using System.Collections.Immutable;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar;

/// <summary>
/// The work of a plan on its evenings. Holds the problem and the schedule it was made from, so that it can be audited alone; the plan is known by its fingerprint.
/// </summary>
public sealed record WorkCalendar
{
    /// <summary>Version of this form; 1.</summary>
    public int Version { get; init; } = 1;

    /// <summary>Fingerprint of the plan whose work it is.</summary>
    public required string Fingerprint { get; init; }

    /// <summary>The moment from which minutes are counted, by the shop's clock.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>Name of the time zone of the shop's clock.</summary>
    public required string TimeZone { get; init; }

    /// <summary>The hours it was made for.</summary>
    public required WorkHours Hours { get; init; }

    /// <summary>The readings of time it was made with; none in one of before there were readings.</summary>
    public ImmutableArray<TimeReading> Times { get; init; } = [];

    /// <summary>What was to be fitted into time.</summary>
    public required ScheduleProblem Problem { get; init; }

    /// <summary>The answer, with its levels and bounds.</summary>
    public required Schedule Schedule { get; init; }

    /// <summary>Every task that is not done, in order of time.</summary>
    public required ImmutableArray<CalendarTask> Tasks { get; init; }

    /// <summary>Every setting, in order of time.</summary>
    public required ImmutableArray<CalendarSetting> Settings { get; init; }

    /// <summary>Every gift that is made, in the plan's order.</summary>
    public required ImmutableArray<CalendarGift> Gifts { get; init; }

    /// <summary>The windows in which something is done, in order.</summary>
    public required ImmutableArray<CalendarEvening> Evenings { get; init; }

    /// <summary>What the plan needs that is to be bought; empty in a calendar of an older program.</summary>
    public ImmutableArray<ShoppingItem> Shopping { get; init; } = [];

    /// <summary>What is to be bought by when, the soonest first: rods when the first of a gift's are cut, bits when the first of its holes are drilled. What no task needs any more comes last.</summary>
    public ImmutableArray<BuyBy> BuyBy() =>
    [
        .. Shopping.Select(item =>
        {
            var gifts = item.Why.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            // Of what is bought only rods have a length.
            var operation = item.Length.IsPositive ? Operation.CutRods : Operation.Drill;
            return new BuyBy(item, Tasks.FirstOrDefault(t => t.Task.Operation == operation && t.Task.Gifts.Any(gifts.Contains))?.Start);
        }).OrderBy(b => b.Before ?? DateTimeOffset.MaxValue),
    ];

    /// <summary>The calendar of a schedule.</summary>
    /// <param name="problem">What was to be fitted.</param>
    /// <param name="schedule">A schedule of it.</param>
    /// <exception cref="ArgumentException">The schedule lacks a task of the problem, or has one that is none.</exception>
    public static WorkCalendar Of(CalendarProblem problem, Schedule schedule)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(schedule);
        return new WorkCalendarMaker(problem, schedule).Make();
    }

    /// <summary>The same work at other times, for who has no plan at hand.</summary>
    /// <param name="problem">The problem, which may hold tasks at other times than before.</param>
    /// <param name="schedule">A schedule of it.</param>
    /// <param name="clock">The clock of this calendar.</param>
    /// <exception cref="ArgumentException">The schedule lacks a task of this calendar.</exception>
    public WorkCalendar With(ScheduleProblem problem, Schedule schedule, ShopClock clock)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(schedule);
        ArgumentNullException.ThrowIfNull(clock);
        return new CalendarRetiming(this, problem, schedule, clock).Make();
    }
}
