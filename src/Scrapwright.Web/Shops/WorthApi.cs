using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Core.Calendar.Worth;
using Scrapwright.Core.Shops;
using Scrapwright.Files;
using Scrapwright.Storage;
using Scrapwright.Web.Hosting;
using Scrapwright.Web.Planning;

namespace Scrapwright.Web.Shops;

/// <summary>Prices, jigs, and making weighed against buying, over HTTP.</summary>
internal static class WorthApi
{
    private const int MostRows = 500;

    internal static void MapWorth(this IEndpointRouteBuilder app)
    {
        app.MapGet(ApiRoutes.Prices, async (WorkshopStore store, CancellationToken cancellationToken) => Answers.Ok(await store.GetPricesAsync(cancellationToken)));

        app.MapPut(ApiRoutes.Prices, (HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<Price[]>(async rows =>
            {
                ImmutableArray<Price> prices = [.. rows];
                if (Problems(prices, PriceRules.Check, p => $"{p.Kind} {p.Name}".ToUpperInvariant(), "name") is { Length: > 0 } problems) return Answers.Invalid(problems);
                await store.PutPricesAsync(prices, cancellationToken);
                return Answers.Ok(prices);
            }));

        app.MapGet(ApiRoutes.Jigs, async (WorkshopStore store, CancellationToken cancellationToken) => Answers.Ok(await store.GetJigsAsync(cancellationToken)));

        app.MapPut(ApiRoutes.Jigs, (HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<Jig[]>(async rows =>
            {
                ImmutableArray<Jig> jigs = [.. rows];
                if (Problems(jigs, JigRules.Check, j => j.Key, "key") is { Length: > 0 } problems) return Answers.Invalid(problems);
                await store.PutJigsAsync(jigs, cancellationToken);
                return Answers.Ok(jigs);
            }));

        app.MapGet(ApiRoutes.Worth, async (WorkshopStore store, CancellationToken cancellationToken) =>
            StoredPlans.FindSound(await store.FindLatestPlanAsync(cancellationToken)) is { } plan
                ? Answers.Ok(WorthAnswer.Of(new WorthRequest
                {
                    Plan = plan,
                    HourWorth = (await store.GetShopAsync(cancellationToken)).HourWorth,
                    Prices = await store.GetPricesAsync(cancellationToken),
                    Jigs = await store.GetJigsAsync(cancellationToken),
                    Times = [.. (await store.ListTimesAsync(cancellationToken)).Select(t => t.Reading)],
                    Done = [.. (await store.GetMarksAsync(cancellationToken)).Done.Select(d => d.Task)],
                }))
                : Answers.Refuse(StatusCodes.Status404NotFound, "There is no plan yet."));
    }

    private static ImmutableArray<FieldProblem> Problems<T>(ImmutableArray<T> rows, Func<T, ImmutableArray<ValueProblem>> check, Func<T, string> key, string field)
        where T : class
    {
        if (rows.Length > MostRows) return [new("", $"{rows.Length} rows", $"a list of at most {MostRows}")];
        var problems = ImmutableArray.CreateBuilder<FieldProblem>();
        var keys = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (i, row) in rows.Index())
        {
            if (row is null)
            {
                problems.Add(new($"[{i}]", "null", FileMessages.AValue));
                continue;
            }

            problems.AddRange(check(row).AsFields($"[{i}]."));
            if (!keys.Add(key(row))) problems.Add(new($"[{i}].{field}", key(row), "each only once"));
        }

        return problems.ToImmutable();
    }
}
