using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar;

/// <summary>Something that holds a calendar up: with more of it gifts are ready sooner.</summary>
public sealed record HoldUp
{
    /// <summary>What kind of thing.</summary>
    public required OtherwiseKind Kind { get; init; }

    /// <summary>What there would be more of, in words of the shop.</summary>
    public required string What { get; init; }

    /// <summary>The hours there would be; null when it is not the hours that are otherwise.</summary>
    public WorkHours? Hours { get; init; }

    /// <summary>How much sooner the last gift is ready. [d], whole days rounded down; below zero when it is later for the sake of a gift that counts more</summary>
    public required int SoonerDays { get; init; }

    /// <summary>Labels of gifts that are late and would be in time.</summary>
    public required ImmutableArray<string> InTime { get; init; }

    /// <summary>By how much gifts would be less late, all of them together. [h], begun hours</summary>
    public required long HoursLessLate { get; init; }

    /// <summary>What that calendar is worth.</summary>
    public required ImmutableArray<ScheduleLevel> Levels { get; init; }
}
