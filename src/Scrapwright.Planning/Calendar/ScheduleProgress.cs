using System.Collections.Immutable;
using Scrapwright.Core.Calendar;

namespace Scrapwright.Planning.Calendar;

/// <summary>Where the search for a calendar stands.</summary>
/// <param name="Phase">What it is at, in words: the level being improved.</param>
/// <param name="Elapsed">Time since the start.</param>
/// <param name="Levels">Levels of the best schedule so far, with bounds.</param>
/// <param name="Best">The best audited schedule so far when it is new in this report; null otherwise.</param>
public sealed record ScheduleProgress(string Phase, TimeSpan Elapsed, ImmutableArray<ScheduleLevel> Levels, Schedule? Best);
