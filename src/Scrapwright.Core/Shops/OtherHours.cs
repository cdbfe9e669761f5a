using System.Collections.Immutable;

namespace Scrapwright.Core.Shops;

/// <summary>Days that have other hours than their weekday: away, a holiday, an evening more.</summary>
/// <param name="First">First day.</param>
/// <param name="Last">Last day; not before the first.</param>
/// <param name="Hours">In order, apart from each other; empty for away.</param>
/// <param name="Note">What the maker calls it.</param>
public sealed record OtherHours(DateOnly First, DateOnly Last, ImmutableArray<HourRange> Hours, string Note = "");
