using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>Every task in its time.</summary>
public sealed record Schedule
{
    /// <summary>All tasks, in the problem's order.</summary>
    public required ImmutableArray<ScheduledTask> Tasks { get; init; }

    /// <summary>All settings, in order of time, then of key.</summary>
    public ImmutableArray<ScheduledSetUp> SetUps { get; init; } = [];

    /// <summary>What it is worth, in the order in which the levels count, with their bounds.</summary>
    public ImmutableArray<ScheduleLevel> Levels { get; init; } = [];
}
