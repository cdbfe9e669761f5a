using Scrapwright.Core.Gifts;

namespace Scrapwright.Client.Api;

/// <summary>A gift as stored.</summary>
/// <param name="Id">Which row.</param>
/// <param name="Gift">The gift.</param>
public sealed record GiftRow(long Id, Gift Gift);
