using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>A window in which something is done: an evening, a Saturday morning.</summary>
/// <param name="Start">When the window begins.</param>
/// <param name="End">When it is over.</param>
/// <param name="Tasks">Ids of its tasks, in order of time.</param>
public sealed record CalendarEvening(DateTimeOffset Start, DateTimeOffset End, ImmutableArray<string> Tasks);
