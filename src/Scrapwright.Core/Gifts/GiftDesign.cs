using Scrapwright.Core.Designs;

namespace Scrapwright.Core.Gifts;

/// <summary>A gift with what came of its design.</summary>
/// <param name="Gift">The gift.</param>
/// <param name="Outcome">Product, or the options that do not fit.</param>
public sealed record GiftDesign(Gift Gift, DesignOutcome Outcome);
