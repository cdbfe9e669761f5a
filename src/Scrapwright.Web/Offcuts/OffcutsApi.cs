using Scrapwright.Client.Api;
using Scrapwright.Storage;
using Scrapwright.Web.Hosting;

namespace Scrapwright.Web.Offcuts;

/// <summary>The pile over HTTP.</summary>
internal static class OffcutsApi
{
    private const string What = "offcut";

    internal static void MapOffcuts(this IEndpointRouteBuilder app)
    {
        app.MapGet(ApiRoutes.Offcuts, async (WorkshopStore store, CancellationToken cancellationToken) =>
            Answers.Ok((await store.ListOffcutsAsync(cancellationToken)).Select(Row)));

        app.MapPost(ApiRoutes.Offcuts, (HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<OffcutEntry>(async entry => OffcutChecks.Of(entry) is { Length: > 0 } problems
                ? Answers.Invalid(problems)
                : Answers.Of(await store.AddOffcutsAsync([New(entry)], cancellationToken), What, Row)));

        app.MapPut(ApiRoutes.Offcuts + "/{id:long}", (long id, HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<OffcutEntry>(async entry => OffcutChecks.Of(entry) is { Length: > 0 } problems
                ? Answers.Invalid(problems)
                : Answers.Of(await store.UpdateOffcutAsync(id, New(entry), cancellationToken), What, Row)));

        app.MapDelete(ApiRoutes.Offcuts + "/{id:long}", async (long id, WorkshopStore store, CancellationToken cancellationToken) =>
            await store.DeleteOffcutAsync(id, cancellationToken) ? Answers.Nothing() : Answers.Missing(What, $"{id}"));

        app.MapPost(ApiRoutes.Offcuts + "/{id:long}/restore", async (long id, WorkshopStore store, CancellationToken cancellationToken) =>
            Answers.Of(await store.RestoreOffcutAsync(id, cancellationToken), What, Row));

        app.MapPost(ApiRoutes.OffcutsPaste, (HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<PasteRequest>(paste => Pasting.AddAsync(paste, store, cancellationToken)));
    }

    internal static OffcutRow Row(StoredOffcut stored) => new(stored.Id, stored.Offcut, stored.Unit);

    private static NewOffcut New(OffcutEntry entry) => new(entry.Offcut, entry.Unit);
}
