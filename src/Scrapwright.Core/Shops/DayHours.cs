using System.Collections.Immutable;

namespace Scrapwright.Core.Shops;

/// <summary>The hours of one weekday.</summary>
/// <param name="Day">The weekday.</param>
/// <param name="Hours">In order, apart from each other; empty for a day off.</param>
public sealed record DayHours(DayOfWeek Day, ImmutableArray<HourRange> Hours);
