using Scrapwright.Client.Api;
using Scrapwright.Core.Gifts;
using Scrapwright.Files;
using Scrapwright.Storage;
using Scrapwright.Web.Hosting;

namespace Scrapwright.Web.Years;

/// <summary>Occasions and what was given, over HTTP.</summary>
internal static class YearsApi
{
    private const string Occasion = "occasion";
    private const string Given = "gift that was given";

    internal static void MapYears(this IEndpointRouteBuilder app)
    {
        app.MapGet(ApiRoutes.Years, async (WorkshopStore store, TimeProvider time, CancellationToken cancellationToken) => Answers.Ok(new YearsView(
            [.. (await store.ListOccasionsAsync(cancellationToken)).Select(Row)],
            [.. (await store.ListGivenAsync(cancellationToken)).Select(Row)],
            DateOnly.FromDateTime(time.GetLocalNow().DateTime))));
        MapOccasions(app);
        MapGiven(app);
    }

    private static void MapOccasions(IEndpointRouteBuilder app)
    {
        app.MapPost(ApiRoutes.Occasions, (HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<Occasion>(async occasion => OccasionRules.Check(occasion).AsFields() is { Length: > 0 } problems
                ? Answers.Invalid(problems)
                : Answers.Of(await store.AddOccasionAsync(occasion, cancellationToken), Occasion, Row)));

        app.MapPut(ApiRoutes.Occasions + "/{id:long}", (long id, HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<Occasion>(async occasion => OccasionRules.Check(occasion).AsFields() is { Length: > 0 } problems
                ? Answers.Invalid(problems)
                : Answers.Of(await store.UpdateOccasionAsync(id, occasion, cancellationToken), Occasion, Row)));

        app.MapDelete(ApiRoutes.Occasions + "/{id:long}", async (long id, WorkshopStore store, CancellationToken cancellationToken) =>
            Answers.Of(await store.RemoveOccasionAsync(id, cancellationToken), id));

        app.MapPost(ApiRoutes.Occasions + "/{id:long}/restore", async (long id, WorkshopStore store, CancellationToken cancellationToken) =>
            Answers.Of(await store.RestoreOccasionAsync(id, cancellationToken), Occasion, Row));

        app.MapPost(ApiRoutes.Occasions + "/{id:long}/given", (long id, HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<GiveGifts>(async asked => await FindNameAsync(store, id, cancellationToken) is { } name
                ? Answers.Of(await store.HandOverAsync(name, asked.On, asked.Stay.IsDefault ? [] : asked.Stay, cancellationToken))
                : Answers.Missing(Occasion, $"{id}")));

        app.MapPost(ApiRoutes.Occasions + "/{id:long}/take-back", (long id, HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<GiftsGiven>(async done => await FindNameAsync(store, id, cancellationToken) is { } name
                ? await store.TakeBackAsync(done.Gifts, done.Given, name, done.Before, cancellationToken) is { Length: > 0 } taken ? Answers.LabelsTaken("gift", [taken]) : Answers.Nothing()
                : Answers.Missing(Occasion, $"{id}")));
    }

    private static void MapGiven(IEndpointRouteBuilder app)
    {
        app.MapPost(ApiRoutes.Given, (HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<GivenGift>(async given => GivenRules.Check(given).AsFields() is { Length: > 0 } problems
                ? Answers.Invalid(problems)
                : Answers.Created(Row(await store.AddGivenAsync(given, cancellationToken)))));

        app.MapPut(ApiRoutes.Given + "/{id:long}", (long id, HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<GivenGift>(async given => GivenRules.Check(given).AsFields() is { Length: > 0 } problems
                ? Answers.Invalid(problems)
                : Answers.Of(await store.UpdateGivenAsync(id, given, cancellationToken), Given, Row)));

        app.MapDelete(ApiRoutes.Given + "/{id:long}", async (long id, WorkshopStore store, CancellationToken cancellationToken) =>
            await store.RemoveGivenAsync(id, cancellationToken) ? Answers.Nothing() : Answers.Missing(Given, $"{id}"));

        app.MapPost(ApiRoutes.Given + "/{id:long}/restore", async (long id, WorkshopStore store, CancellationToken cancellationToken) =>
            Answers.Of(await store.RestoreGivenAsync(id, cancellationToken), Given, Row));
    }

    private static async Task<string?> FindNameAsync(WorkshopStore store, long id, CancellationToken cancellationToken) =>
        (await store.ListOccasionsAsync(cancellationToken)).FirstOrDefault(row => row.Id == id)?.Occasion.Name;

    private static OccasionRow Row(StoredOccasion stored) => new(stored.Id, stored.Occasion);

    private static GivenRow Row(StoredGiven stored) => new(stored.Id, stored.Given);
}
