using Scrapwright.Core.Gifts;

namespace Scrapwright.Storage;

/// <summary>A gift that somebody was given, as kept.</summary>
/// <param name="Id">Which row; above zero, never used again.</param>
/// <param name="Given">What was given.</param>
public sealed record StoredGiven(long Id, GivenGift Given);
