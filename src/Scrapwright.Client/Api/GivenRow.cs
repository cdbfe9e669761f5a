using Scrapwright.Core.Gifts;

namespace Scrapwright.Client.Api;

/// <summary>What somebody was given, as stored.</summary>
/// <param name="Id">Which row.</param>
/// <param name="Given">What was given.</param>
public sealed record GivenRow(long Id, GivenGift Given);
