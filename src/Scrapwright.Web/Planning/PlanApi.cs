using System.Text;
using Scrapwright.Client.Api;
using Scrapwright.Core.Plans;
using Scrapwright.Storage;

namespace Scrapwright.Web.Planning;

/// <summary>The latest plan over HTTP.</summary>
internal static class PlanApi
{
    internal static void MapPlan(this IEndpointRouteBuilder app) =>
        app.MapGet(ApiRoutes.Plan, async (HttpResponse response, WorkshopStore store, CancellationToken cancellationToken) =>
        {
            if (await store.FindLatestPlanAsync(cancellationToken) is not { } plan) return Answers.Nothing();
            var isStale = plan.Fingerprint != PlanJson.Fingerprint(await store.GetRequestAsync(cancellationToken));
            response.Headers[ApiRoutes.StaleHeader] = isStale ? "true" : "false";
            return TypedResults.Text(plan.Json, "application/json", Encoding.UTF8);
        });
}
