using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Planning.Problems;

/// <summary>A gift whose design could be derived.</summary>
/// <param name="Index">Its place in the problem.</param>
/// <param name="Gift">The gift.</param>
/// <param name="Product">Its product.</param>
/// <param name="Weight">What making it is worth.</param>
internal sealed record GiftDemand(int Index, Gift Gift, Product Product, long Weight);
