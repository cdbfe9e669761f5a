using Scrapwright.Core.Shops;

namespace Scrapwright.Storage;

/// <summary>A reading of time as kept.</summary>
/// <param name="Id">Which; grows.</param>
/// <param name="Reading">The reading.</param>
public sealed record StoredTime(long Id, TimeReading Reading);
