using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Core.Gifts;
using Scrapwright.Storage;
using Scrapwright.Web.Hosting;

namespace Scrapwright.Web.Gifts;

/// <summary>The list of gifts over HTTP.</summary>
internal static class GiftsApi
{
    private const string What = "gift";

    internal static void MapGifts(this IEndpointRouteBuilder app)
    {
        app.MapGet(ApiRoutes.Gifts, async (WorkshopStore store, CancellationToken cancellationToken) =>
            Answers.Ok((await store.ListGiftsAsync(cancellationToken)).Select(Row)));

        app.MapPost(ApiRoutes.Gifts, (HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<Gift>(async gift => await ProblemsAsync(gift, store, cancellationToken) is { Length: > 0 } problems
                ? Answers.Invalid(problems)
                : Answers.Of(await store.AddGiftsAsync([gift], cancellationToken), What, Row)));

        app.MapPut(ApiRoutes.Gifts + "/{id:long}", (long id, HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<Gift>(async gift => await ProblemsAsync(gift, store, cancellationToken) is { Length: > 0 } problems
                ? Answers.Invalid(problems)
                : Answers.Of(await store.UpdateGiftAsync(id, gift, cancellationToken), What, Row)));

        app.MapDelete(ApiRoutes.Gifts + "/{id:long}", async (long id, WorkshopStore store, CancellationToken cancellationToken) =>
            await store.DeleteGiftAsync(id, cancellationToken) ? Answers.Nothing() : Answers.Missing(What, $"{id}"));

        app.MapPost(ApiRoutes.Gifts + "/{id:long}/restore", async (long id, WorkshopStore store, CancellationToken cancellationToken) =>
            Answers.Of(await store.RestoreGiftAsync(id, cancellationToken), What, Row));
    }

    private static async Task<ImmutableArray<FieldProblem>> ProblemsAsync(Gift gift, WorkshopStore store, CancellationToken cancellationToken) =>
        GiftChecks.Of(gift, await store.GetShopAsync(cancellationToken), await store.ListDesignsAsync(cancellationToken), await store.GetYearsAsync(cancellationToken));

    private static GiftRow Row(StoredGift stored) => new(stored.Id, stored.Gift);
}
