using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>Windows for one sort of work: all of the shop's hours, those in which machines may run, those that are warm enough for glue.</summary>
/// <param name="Key">Unique name.</param>
/// <param name="Windows">In order of time, apart from each other.</param>
public sealed record ScheduleHours(string Key, ImmutableArray<ScheduleWindow> Windows);
