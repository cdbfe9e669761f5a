using Scrapwright.Client.Api;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Why;

namespace Scrapwright.Web.Tests.Planning;

public sealed class WhyApiTests
{
    [Fact]
    public async Task A_question_about_the_latest_plan_is_answered_and_one_about_nothing_is_refused()
    {
        await using var app = await RunningApp.StartAsync();
        await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.PlanWhy, WhyQuestion.NotMade("nobody")), 404);
        await app.Http.PostAsync(ApiRoutes.Example, null);
        await app.PostAsync(ApiRoutes.Runs, new RunRequest(1));
        for (var i = 0; i < 600 && (await app.GetAsync<RunStatus>(ApiRoutes.CurrentRun)).State is not (RunState.Done or RunState.Failed); i++) await Task.Delay(100);
        var plan = await app.GetAsync<Plan>(ApiRoutes.Plan);
        var glueUp = plan.GlueUps[0];
        var question = WhyQuestion.ThisOffcut(glueUp.Gift, glueUp.Part, glueUp.Strips[0].Offcut);

        var answer = await RunningApp.ReadAsync<WhyAnswer>(await app.PostAsync(ApiRoutes.PlanWhy, question));

        Assert.Equal(question, answer.Question);
        Assert.NotEmpty(WhyWords.Say(answer, PlanIndex.Of(plan)));
        var refused = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.PlanWhy, question with { Offcut = "nothing" }), 400);
        Assert.Contains("expected one of", refused.Title);
    }
}
