using System.Collections.Immutable;

namespace Scrapwright.Core.Calendar;

/// <summary>When a gift is ready.</summary>
/// <param name="Gift">Label of the gift.</param>
/// <param name="Last">The tasks after which it is, with what has to dry then; empty when all of it is done.</param>
public sealed record GiftReady(string Gift, ImmutableArray<ScheduleLast> Last);
