using Scrapwright.Client.Api;
using Scrapwright.Core.Plans;
using Scrapwright.Files;
using Scrapwright.Storage;
using Scrapwright.Web.Hosting;
using Scrapwright.Web.Planning;

namespace Scrapwright.Web.Workshops;

/// <summary>The workshop as a whole over HTTP.</summary>
internal static class WorkshopApi
{
    private const int LongestName = 60;

    internal static void MapWorkshop(this IEndpointRouteBuilder app)
    {
        app.MapGet(ApiRoutes.Workshop, async (WorkshopStore store, CancellationToken cancellationToken) =>
            Answers.Ok(await SummaryAsync(store, cancellationToken)));

        app.MapPut(ApiRoutes.WorkshopName, (HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<WorkshopName>(async name =>
            {
                var checks = new ValueChecks();
                checks.Text("name", name.Name, LongestName);
                if (checks.Problems.AsFields() is { Length: > 0 } problems) return Answers.Invalid(problems);
                await store.PutNameAsync(name.Name.Trim(), cancellationToken);
                return Answers.Ok(await SummaryAsync(store, cancellationToken));
            }));

        app.MapDelete(ApiRoutes.Workshop, async (WorkshopStore store, PlanRuns runs, CancellationToken cancellationToken) =>
        {
            await runs.CancelAsync(cancellationToken);
            await store.ClearAsync(cancellationToken);
            await runs.ForgetAsync(cancellationToken);
            return Answers.Nothing();
        });
    }

    internal static async Task<WorkshopSummary> SummaryAsync(WorkshopStore store, CancellationToken cancellationToken)
    {
        var request = await store.GetRequestAsync(cancellationToken);
        var plan = await store.FindLatestFingerprintAsync(cancellationToken);
        return new WorkshopSummary(
            request.Workshop,
            request.Pile.Length,
            request.Pile.Sum(o => o.Count),
            request.Gifts.Length,
            HasPlan: plan is not null,
            PlanIsStale: plan is not null && plan != PlanJson.Fingerprint(request));
    }
}
