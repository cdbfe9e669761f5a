using Scrapwright.Core.Shops;

namespace Scrapwright.Client.Api;

/// <summary>A reading of time as stored.</summary>
/// <param name="Id">Which row.</param>
/// <param name="Reading">The reading.</param>
public sealed record TimeRow(long Id, TimeReading Reading);
