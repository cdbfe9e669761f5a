using Scrapwright.Client.Api;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Files;
using Scrapwright.Storage;
using Scrapwright.Web.Hosting;

namespace Scrapwright.Web.Planning;

/// <summary>What the maker decides, over HTTP: all of it as one document, and the order of a glue-up's strips.</summary>
internal static class ChoicesApi
{
    internal static void MapChoices(this IEndpointRouteBuilder app)
    {
        app.MapGet(ApiRoutes.Choices, async (WorkshopStore store, CancellationToken cancellationToken) => Answers.Ok(await store.GetChoicesAsync(cancellationToken)));

        app.MapPut(ApiRoutes.Choices, (HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<MakerChoices>(async choices =>
            {
                var before = await store.GetRequestAsync(cancellationToken);

                // What is kept already may name an offcut that was deleted since; only what is new must mean something.
                var known = ChoicesFile.Check(before.Choices, before).Select(p => p.Found).ToHashSet(StringComparer.Ordinal);
                var problems = ChoicesFile.Check(choices, before).Where(p => !known.Contains(p.Found)).AsFields();
                if (!problems.IsEmpty) return Answers.Invalid(problems);
                await store.PutChoicesAsync(choices, before, cancellationToken);
                return Answers.Ok(choices);
            }));

        app.MapPost(ApiRoutes.PlanOrder, (HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<StripsInOrder>(asked => OrderAsync(asked, store, cancellationToken)));
    }

    private static async Task<IResult> OrderAsync(StripsInOrder asked, WorkshopStore store, CancellationToken cancellationToken)
    {
        if (StoredPlans.FindSound(await store.FindLatestPlanAsync(cancellationToken)) is not { } plan)
            return Answers.Refuse(StatusCodes.Status404NotFound, "There is no plan yet.");
        if (plan.GlueUps.FirstOrDefault(g => g.Id == asked.GlueUp) is not { } glueUp || !glueUp.Strips.Select(s => s.Piece).Order(StringComparer.Ordinal).SequenceEqual(asked.Strips.Order(StringComparer.Ordinal)))
            return Answers.Refuse(StatusCodes.Status409Conflict, "The plan has changed meanwhile; look at it again.", new FieldProblem("glueUp", asked.GlueUp, "a glue-up of the latest plan with just these strips"));
        var pieces = glueUp.Strips.Select(s => s.Piece).ToList();
        var ordered = PlanOrder.With(plan, asked.GlueUp, [.. asked.Strips.Select(s => pieces.IndexOf(s))]);
        if (PlanAudit.Check(ordered) is { IsEmpty: false } findings)
            return Answers.Invalid([.. findings.Take(20).Select(f => new FieldProblem(f.Where, f.Found, f.Expected))]);

        // The plan may be of a workshop that has changed since: the order is kept there too, the plan stays as stale as it was.
        var workshop = await store.GetRequestAsync(cancellationToken);
        await store.PutChoicesAsync(workshop.Choices.With(ChosenOrder.Of(ordered.GlueUps.Single(g => g.Id == asked.GlueUp))), cancellationToken);
        await store.AddPlanAsync(ordered, cancellationToken);
        return Answers.Nothing();
    }
}
