using Scrapwright.Client.Api;
using Scrapwright.Core.Plans.Why;
using Scrapwright.Planning;
using Scrapwright.Storage;
using Scrapwright.Web.Hosting;

namespace Scrapwright.Web.Planning;

/// <summary>Questions about the latest plan over HTTP.</summary>
internal static class WhyApi
{
    private const double Seconds = 8;

    internal static void MapWhy(this IEndpointRouteBuilder app) =>
        app.MapPost(ApiRoutes.PlanWhy, (HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<WhyQuestion>(async question =>
            {
                if (StoredPlans.FindSound(await store.FindLatestPlanAsync(cancellationToken)) is not { } plan)
                    return Answers.Refuse(StatusCodes.Status404NotFound, "There is no plan yet.");
                if (WhyFault.Of(plan, question) is { } fault)
                    return Answers.Refuse(StatusCodes.Status400BadRequest, fault);
                return Answers.Ok(await Explainer.AnswerAsync(plan, question, new PlanLimits { Seconds = Seconds }, cancellationToken));
            }));
}
