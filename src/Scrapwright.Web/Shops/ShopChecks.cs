using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Core.Shops;
using Scrapwright.Files;

namespace Scrapwright.Web.Shops;

/// <summary>What a shop must be to be kept: the rules of its file, told by field.</summary>
internal static class ShopChecks
{
    internal static ImmutableArray<FieldProblem> Of(Shop shop) => [.. ShopRules.Check(shop).Select(p => new FieldProblem(p.Path, p.Found, p.Expected))];
}
