using Scrapwright.Core.Gifts;

namespace Scrapwright.Storage;

/// <summary>A gift as kept.</summary>
/// <param name="Id">Which row; above zero, never used again.</param>
/// <param name="Gift">The gift.</param>
public sealed record StoredGift(long Id, Gift Gift);
