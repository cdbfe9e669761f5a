using Scrapwright.Core.Gifts;

namespace Scrapwright.Storage;

/// <summary>An occasion as kept.</summary>
/// <param name="Id">Which row; above zero, never used again.</param>
/// <param name="Occasion">The occasion.</param>
public sealed record StoredOccasion(long Id, Occasion Occasion);
