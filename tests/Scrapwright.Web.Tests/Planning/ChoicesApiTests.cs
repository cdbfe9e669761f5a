using System.Net;
using Scrapwright.Client.Api;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Web.Tests.Planning;

public sealed class ChoicesApiTests
{
    [Fact]
    public async Task Choices_are_kept_and_what_means_nothing_is_refused_by_field()
    {
        await using var app = await RunningApp.StartAsync();
        await app.Http.PostAsync(ApiRoutes.Example, null);
        var saved = (await app.GetAsync<IReadOnlyList<OffcutRow>>(ApiRoutes.Offcuts))[0].Offcut.Label;

        Assert.Equal(HttpStatusCode.OK, (await app.PutAsync(ApiRoutes.Choices, new MakerChoices { Saved = [saved] })).StatusCode);
        var problem = await RunningApp.ReadProblemAsync(await app.PutAsync(ApiRoutes.Choices, new MakerChoices { Saved = [saved], Pins = [new("nowhere", "nobody", "x")] }), 400);

        Assert.Equal(["pins[0].offcut", "pins[0].gift"], problem.Problems.Select(p => p.Field));
        Assert.Equal([saved], (await app.GetAsync<MakerChoices>(ApiRoutes.Choices)).Saved);
    }

    [Fact]
    public async Task A_plan_that_keeps_to_new_choices_is_not_stale_and_one_that_does_not_is()
    {
        await using var app = await PlannedAsync();
        var plan = await app.GetAsync<Plan>(ApiRoutes.Plan);
        var glued = DoneMarks.Glue(plan, plan.GlueUps[0].Id);

        await app.PutAsync(ApiRoutes.Choices, glued);
        Assert.False((await app.GetAsync<WorkshopSummary>(ApiRoutes.Workshop)).PlanIsStale);
        Assert.Equal(plan.GlueUps[0].Id, Assert.Single((await app.GetAsync<Plan>(ApiRoutes.Plan)).Request.Choices.Glued).Id);

        await app.PutAsync(ApiRoutes.Choices, glued with { Saved = [plan.GlueUps[1].Strips[0].Offcut] });
        Assert.True((await app.GetAsync<WorkshopSummary>(ApiRoutes.Workshop)).PlanIsStale);
    }

    [Fact]
    public async Task A_mark_taken_off_again_leaves_the_plan_as_it_was_also_when_another_was_set_meanwhile()
    {
        await using var app = await PlannedAsync();
        var plan = await app.GetAsync<Plan>(ApiRoutes.Plan);
        var first = DoneMarks.Glue(plan, plan.GlueUps[0].Id);
        var both = DoneMarks.Glue(plan, first, plan.GlueUps[1].Id);
        await app.PutAsync(ApiRoutes.Choices, first);
        await app.PutAsync(ApiRoutes.Choices, both);

        await app.PutAsync(ApiRoutes.Choices, DoneMarks.Unglue(both, plan.GlueUps[0].Id));
        Assert.False((await app.GetAsync<WorkshopSummary>(ApiRoutes.Workshop)).PlanIsStale);
        Assert.Equal(plan.GlueUps[1].Id, Assert.Single((await app.GetAsync<Plan>(ApiRoutes.Plan)).Request.Choices.Glued).Id);

        await app.PutAsync(ApiRoutes.Choices, new MakerChoices());
        Assert.False((await app.GetAsync<WorkshopSummary>(ApiRoutes.Workshop)).PlanIsStale);
        Assert.Equal(PlanJson.Write(plan), PlanJson.Write(await app.GetAsync<Plan>(ApiRoutes.Plan)));
    }

    [Fact]
    public async Task A_plan_made_under_a_choice_is_stale_when_the_choice_is_taken_back()
    {
        await using var app = await PlannedAsync();
        var plan = await app.GetAsync<Plan>(ApiRoutes.Plan);
        await app.PutAsync(ApiRoutes.Choices, new MakerChoices { Saved = [plan.GlueUps[0].Strips[0].Offcut] });
        await RunAsync(app);
        Assert.False((await app.GetAsync<WorkshopSummary>(ApiRoutes.Workshop)).PlanIsStale);

        await app.PutAsync(ApiRoutes.Choices, new MakerChoices());

        Assert.True((await app.GetAsync<WorkshopSummary>(ApiRoutes.Workshop)).PlanIsStale);
    }

    [Fact]
    public async Task Another_order_of_strips_is_kept_with_the_plan_and_alike_neighbours_are_refused()
    {
        await using var app = await PlannedAsync();
        var glueUp = (await app.GetAsync<Plan>(ApiRoutes.Plan)).GlueUps.First(g => g.Strips.Select(s => s.Offcut[0]).Distinct().Count() is > 1 and var woods && woods < g.Strips.Length);
        string[] pieces = [.. glueUp.Strips.Select(s => s.Piece)];

        Assert.Equal(HttpStatusCode.NoContent, (await app.PostAsync(ApiRoutes.PlanOrder, new StripsInOrder(glueUp.Id, [.. pieces.Reverse()]))).StatusCode);
        var turned = (await app.GetAsync<Plan>(ApiRoutes.Plan)).GlueUps.Single(g => g.Id == glueUp.Id);
        Assert.Equal(pieces.Reverse(), turned.Strips.Select(s => s.Piece));
        Assert.False((await app.GetAsync<WorkshopSummary>(ApiRoutes.Workshop)).PlanIsStale);
        Assert.Single((await app.GetAsync<MakerChoices>(ApiRoutes.Choices)).Orders);

        var alike = glueUp.Strips.OrderBy(s => s.Offcut, StringComparer.Ordinal).Select(s => s.Piece);
        await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.PlanOrder, new StripsInOrder(glueUp.Id, [.. alike])), 400);
        await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.PlanOrder, new StripsInOrder(glueUp.Id, ["nothing"])), 409);
    }

    [Fact]
    public async Task A_second_run_begins_from_the_first_and_tells_what_changed()
    {
        await using var app = await PlannedAsync();
        var plan = await app.GetAsync<Plan>(ApiRoutes.Plan);
        await app.PutAsync(ApiRoutes.Choices, new MakerChoices { Saved = [plan.GlueUps[0].Strips[0].Offcut] });

        var status = await RunAsync(app);

        Assert.True(status.HasFormer);
        Assert.Contains(status.Changes, c => c.Kind is ChangeKind.Strip or ChangeKind.GlueUp);
        Assert.Contains((await app.GetAsync<Plan>(ApiRoutes.Plan)).Levels, l => l.Kind == LevelKind.StripsAsBefore);
    }

    private static async Task<RunningApp> PlannedAsync()
    {
        var app = await RunningApp.StartAsync();
        await app.Http.PostAsync(ApiRoutes.Example, null);
        Assert.True((await RunAsync(app)).HasPlan);
        return app;
    }

    private static async Task<RunStatus> RunAsync(RunningApp app)
    {
        await app.PostAsync(ApiRoutes.Runs, new RunRequest(1));
        for (var i = 0; i < 600; i++)
        {
            var status = await app.GetAsync<RunStatus>(ApiRoutes.CurrentRun);
            if (status.State is RunState.Done or RunState.Failed) return status;
            await Task.Delay(100);
        }

        throw new TimeoutException("The run did not end.");
    }
}
