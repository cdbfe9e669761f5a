using Scrapwright.Client.Api;
using Scrapwright.Core.Shops;
using Scrapwright.Files;
using Scrapwright.Storage;
using Scrapwright.Web.Hosting;

namespace Scrapwright.Web.Shops;

/// <summary>How long work took, over HTTP.</summary>
internal static class TimesApi
{
    internal static void MapTimes(this IEndpointRouteBuilder app)
    {
        app.MapGet(ApiRoutes.Times, async (WorkshopStore store, CancellationToken cancellationToken) =>
            Answers.Ok((await store.ListTimesAsync(cancellationToken)).Select(Row)));

        app.MapPost(ApiRoutes.Times, (HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<TimeReading>(async reading => TimeRules.Check(reading).AsFields() is { Length: > 0 } problems
                ? Answers.Invalid(problems)
                : Answers.Created(Row(await store.AddTimeAsync(reading, cancellationToken)))));

        app.MapDelete(ApiRoutes.Times + "/{id:long}", async (long id, WorkshopStore store, CancellationToken cancellationToken) =>
            await store.DeleteTimeAsync(id, cancellationToken) ? Answers.Nothing() : Answers.Missing("reading", $"{id}"));
    }

    private static TimeRow Row(StoredTime stored) => new(stored.Id, stored.Reading);
}
