using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>One thing to do, without a break.</summary>
public sealed record ScheduleTask
{
    /// <summary>Unique name; the same thing has the same name in every calendar of a workshop.</summary>
    public required string Id { get; init; }

    /// <summary>How long it takes, set-up not counted. [min], from zero</summary>
    public required int Minutes { get; init; }

    /// <summary>What it needs meanwhile; each resource once.</summary>
    public ImmutableArray<ScheduleNeed> Needs { get; init; } = [];

    /// <summary>Key of the hours within one window of which it lies from start to end; empty when it may lie at any time.</summary>
    public string Hours { get; init; } = "";

    /// <summary>Key of the setting its station has to be in, with hours and at least one minute; empty for none.</summary>
    public string SetUp { get; init; } = "";

    /// <summary>Not before this. [min]</summary>
    public int EarliestStart { get; init; }

    /// <summary>Just then, because the maker put it there; null when it is free. [min]</summary>
    public int? FixedStart { get; init; }
}
