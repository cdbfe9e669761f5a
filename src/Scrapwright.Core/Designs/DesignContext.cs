using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Designs;

/// <summary>What a design needs to know beside its own options.</summary>
/// <param name="Shop">The shop: unit of bare numbers, bits, rods, kerfs.</param>
/// <param name="Holds">The product of the gift that this one holds; null when the design's own options describe it.</param>
/// <param name="HoldsGift">Label of the gift it holds; empty when it holds none.</param>
public sealed record DesignContext(Shop Shop, Product? Holds = null, string HoldsGift = "");
