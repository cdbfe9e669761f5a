using Scrapwright.Client.Api;
using Scrapwright.Core.Plans.Ideas;

namespace Scrapwright.Web.Tests.Planning;

public sealed class IdeasApiTests
{
    [Fact]
    public async Task A_pile_gives_ideas_and_a_question_about_nothing_is_refused()
    {
        await using var app = await RunningApp.StartAsync();
        var empty = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.Ideas, new IdeasQuestion(IdeasKind.Gifts)), 400);
        Assert.Contains("empty pile", empty.Title);
        await app.Http.PostAsync(ApiRoutes.Example, null);
        var question = new IdeasQuestion(IdeasKind.Gifts, BesideGifts: false, Seconds: 3);

        var answer = await RunningApp.ReadAsync<IdeasAnswer>(await app.PostAsync(ApiRoutes.Ideas, question));

        Assert.Equal(question, answer.Question);
        Assert.NotEmpty(answer.Proposals);
        var refused = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.Ideas, question with { Kind = IdeasKind.Offcut, Offcut = "nothing" }), 400);
        Assert.Contains("expected one of the pile", refused.Title);
    }

    [Fact]
    public async Task A_proposal_can_be_put_on_the_list()
    {
        await using var app = await RunningApp.StartAsync();
        await app.Http.PostAsync(ApiRoutes.Example, null);
        var answer = await RunningApp.ReadAsync<IdeasAnswer>(await app.PostAsync(ApiRoutes.Ideas, new IdeasQuestion(IdeasKind.Gifts, BesideGifts: false, Seconds: 2)));

        foreach (var gift in answer.Proposals[0].Gifts)
        {
            await RunningApp.ReadAsync<GiftRow>(await app.PostAsync(ApiRoutes.Gifts, gift));
        }
    }

    [Fact]
    public async Task Ending_the_questions_answers_them_with_what_is_known()
    {
        await using var app = await RunningApp.StartAsync();
        await app.Http.PostAsync(ApiRoutes.Example, null);
        var asked = app.PostAsync(ApiRoutes.Ideas, new IdeasQuestion(IdeasKind.Gifts, BesideGifts: false, Seconds: IdeasQuestion.MostSeconds));

        while (!asked.IsCompleted)
        {
            (await app.Http.PostAsync(ApiRoutes.IdeasEnd, null)).EnsureSuccessStatusCode();
            await Task.WhenAny(asked, Task.Delay(100));
        }

        Assert.NotEmpty((await RunningApp.ReadAsync<IdeasAnswer>(await asked)).NotTried);
    }
}
