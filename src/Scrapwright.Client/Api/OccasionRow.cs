using Scrapwright.Core.Gifts;

namespace Scrapwright.Client.Api;

/// <summary>An occasion as stored.</summary>
/// <param name="Id">Which row.</param>
/// <param name="Occasion">The occasion.</param>
public sealed record OccasionRow(long Id, Occasion Occasion);
