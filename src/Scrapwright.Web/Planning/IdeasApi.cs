using Scrapwright.Client.Api;
using Scrapwright.Core.Plans.Ideas;
using Scrapwright.Planning;
using Scrapwright.Storage;
using Scrapwright.Web.Hosting;

namespace Scrapwright.Web.Planning;

/// <summary>Ideas for the workshop over HTTP.</summary>
internal static class IdeasApi
{
    internal static void MapIdeas(this IEndpointRouteBuilder app)
    {
        var questions = new OpenQuestions();
        app.MapPost(ApiRoutes.Ideas, (HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<IdeasQuestion>(async question =>
            {
                var workshop = await store.GetRequestAsync(cancellationToken);
                if (IdeasFault.Of(workshop, question) is { } fault)
                    return Answers.Refuse(StatusCodes.Status400BadRequest, fault);
                var plan = StoredPlans.FindSound(await store.FindLatestPlanAsync(cancellationToken));
                return Answers.Ok(await questions.AnswerAsync(token => IdeaMaker.AnswerAsync(workshop, plan, question, new PlanLimits(), null, token), cancellationToken));
            }));
        app.MapPost(ApiRoutes.IdeasEnd, () =>
        {
            questions.End();
            return Answers.Nothing();
        });
    }
}
