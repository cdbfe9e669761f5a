using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>Something that has to be ready: a gift.</summary>
/// <param name="Id">Unique name.</param>
/// <param name="Last">It is ready when all of these are over and have waited.</param>
/// <param name="Due">By then; null for no date, below zero for one that is over. [min]</param>
/// <param name="Priority">1 is served first; 1 to 9. Any lateness of a lower number counts more than all of the higher numbers together.</param>
/// <param name="Wanted">Ready by then it has all the slack it should have; null where slack does not count, below zero for a time that is over. [min]</param>
public sealed record ScheduleDelivery(string Id, ImmutableArray<ScheduleLast> Last, int? Due, int Priority, int? Wanted = null);
