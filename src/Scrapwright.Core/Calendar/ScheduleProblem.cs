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
}
