using Scrapwright.Web.Hosting;
using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Shops;
using Scrapwright.Files;

namespace Scrapwright.Web.Shops;

/// <summary>What a shop must be to be kept: the rules of its file, and that the gifts' climates stay; told by field.</summary>
internal static class ShopChecks
{
    internal static ImmutableArray<FieldProblem> Of(Shop shop, IEnumerable<Gift> gifts) =>
        ShopRules.Check(shop).AddRange(GiftRules.CheckClimates(gifts, shop)).AsFields();
}
