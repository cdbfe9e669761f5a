using Scrapwright.Client.Api;
using Scrapwright.Core.Shops;
using Scrapwright.Storage;
using Scrapwright.Web.Hosting;

namespace Scrapwright.Web.Shops;

/// <summary>The shop over HTTP.</summary>
internal static class ShopApi
{
    internal static void MapShop(this IEndpointRouteBuilder app)
    {
        app.MapGet(ApiRoutes.Shop, async (WorkshopStore store, CancellationToken cancellationToken) =>
            Answers.Ok(await store.GetShopAsync(cancellationToken)));

        app.MapPut(ApiRoutes.Shop, (HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<Shop>(async shop =>
            {
                var gifts = (await store.ListGiftsAsync(cancellationToken)).Select(stored => stored.Gift);
                if (ShopChecks.Of(shop, gifts) is { Length: > 0 } problems) return Answers.Invalid(problems);
                await store.PutShopAsync(shop, cancellationToken);
                return Answers.Ok(shop);
            }));
    }
}
