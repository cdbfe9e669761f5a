using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>
/// What is to be fitted into time: tasks that need resources, links between them, and the windows in which they may be worked at. Times are whole minutes from the start,
/// minutes that pass, not what a clock on the wall shows: a change to summer time is in the windows already.
/// </summary>
public sealed record ScheduleProblem
{
    /// <summary>Nothing starts, waits or is held beyond this. [min], above zero</summary>
    public required int HorizonMinutes { get; init; }

    /// <summary>What tasks share: makers, stations, clamps; ids are unique.</summary>
    public required ImmutableArray<ScheduleResource> Resources { get; init; }

    /// <summary>The tasks; ids are unique.</summary>
    public required ImmutableArray<ScheduleTask> Tasks { get; init; }

    /// <summary>Which task follows which, and after how long.</summary>
    public ImmutableArray<ScheduleLink> Links { get; init; } = [];

    /// <summary>When tasks may be worked at; keys are unique.</summary>
    public ImmutableArray<ScheduleHours> Hours { get; init; } = [];

    /// <summary>The settings that stations are brought into; keys are unique.</summary>
    public ImmutableArray<ScheduleSetUp> SetUps { get; init; } = [];

    /// <summary>What has to be ready, and when.</summary>
    public ImmutableArray<ScheduleDelivery> Deliveries { get; init; } = [];

    /// <summary>Starts of a calendar before, to which this one keeps where it costs nothing; ids that are no tasks any more are passed over.</summary>
    public ImmutableArray<ScheduledTask> Before { get; init; } = [];

    /// <summary>Minutes of setting up in the calendar before, of what is still to come: fewer are no gain for which tasks move. Null where that does not matter. [min], from zero</summary>
    public int? SetUpMinutesBefore { get; init; }

    /// <summary>In steps of so many minutes it counts when all is ready, a begun one whole: what is less is no gain for which tasks move. [min], above zero</summary>
    public int ReadyStepMinutes { get; init; } = 1;

    /// <summary>Where the first of these steps ends. [min], from zero, below a step</summary>
    public int ReadyOffsetMinutes { get; init; }
}
