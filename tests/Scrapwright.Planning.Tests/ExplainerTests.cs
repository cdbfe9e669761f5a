using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Why;
using Scrapwright.Files;

namespace Scrapwright.Planning.Tests;

public sealed class ExplainerTests
{
    [Fact]
    public async Task Without_an_offcut_costs_what_planning_without_it_costs()
    {
        var plan = await Requests.PlanOf(Requests.FourSquares);
        var offcut = plan.GlueUps[0].Strips[0].Offcut;

        var answer = await AskAsync(plan, WhyQuestion.ThisOffcut("bench", "square", offcut));

        var without = await Requests.PlanOf(plan.Request with { Pile = [.. plan.Request.Pile.Where(o => o.Label != offcut)] });
        Assert.True(answer is { CanBeOtherwise: true, IsProven: true });
        Assert.Equal(
            without.Levels.Where((l, i) => l.Value != plan.Levels[i].Value).Select((l, _) => (l.Kind, l.Value)),
            answer.Costs.Select(c => (c.Kind, c.Otherwise)));
        Assert.All(answer.Costs, c => Assert.Equal(Requests.Level(plan, c.Kind).Value, c.Now));
        Assert.StartsWith($"Without {offcut}", WhyWords.Say(answer, PlanIndex.Of(plan)));
    }

    [Fact]
    public async Task The_only_wood_of_its_kind_cannot_be_done_without()
    {
        var plan = await Requests.PlanOf(Requests.FourSquares with { Pile = [.. Requests.FourSquares.Pile.Where(o => o.Label is "W1" or "M1" or "W2")] });

        var answer = await AskAsync(plan, WhyQuestion.ThisOffcut("bench", "square", "M1"));

        Assert.True(answer is { CanBeOtherwise: false, IsProven: true });
        Assert.Contains("could not be made", WhyWords.Say(answer, PlanIndex.Of(plan)));
    }

    [Fact]
    public async Task Thin_stock_is_not_resawn_because_it_cannot_be()
    {
        var plan = await Requests.PlanOf(Requests.FourSquares);

        var answer = await AskAsync(plan, WhyQuestion.Resawing("bench", "square"));

        Assert.True(answer is { CanBeOtherwise: false, IsProven: true, GlueUps: 1, Layers: 1 });
        Assert.Equal("Why not resaw?", WhyWords.Ask(answer.Question, answer.GlueUps, answer.Layers));
    }

    [Fact]
    public async Task Two_glue_ups_instead_of_one_cost_a_clamp_load()
    {
        var plan = await Requests.PlanOf(Requests.FourSquares);

        var answer = await AskAsync(plan, WhyQuestion.GlueUps("bench", "square"));

        Assert.True(answer is { CanBeOtherwise: true, IsProven: true });
        Assert.Contains(answer.Costs, c => c is { Kind: LevelKind.ClampLoads, Now: 1, Otherwise: 2 });
        Assert.Contains("1 clamp load more", WhyWords.Say(answer, PlanIndex.Of(plan)));
    }

    [Fact]
    public async Task A_gift_that_is_not_made_says_in_whose_place_it_could_be()
    {
        var plan = await Requests.PlanOf(Requests.FourSquares with
        {
            Pile = [.. Requests.FourSquares.Pile.Take(3)],
            Gifts = [Requests.Squares("first") with { Priority = 1 }, Requests.Squares("second") with { Priority = 2 }],
        });

        var answer = await AskAsync(plan, WhyQuestion.NotMade("second"));

        Assert.Equal(["first"], answer.InPlaceOf);
        Assert.True(answer.IsProven);
        Assert.Contains("in place of first (more important)", WhyWords.Say(answer, PlanIndex.Of(plan)));
    }

    [Fact]
    public async Task A_gift_that_no_wood_here_can_make_says_what_is_missing_of_the_whole_pile()
    {
        var plan = await Requests.PlanOf(Requests.FourSquares with { Gifts = [Requests.Squares("small"), Requests.Squares("huge", ("size", "20 in"))] });

        var answer = await AskAsync(plan, WhyQuestion.NotMade("huge"));

        Assert.True(answer is { CanBeOtherwise: false, IsProven: true });
        Assert.NotEmpty(answer.Reasons);
        Assert.StartsWith("Even with the whole pile", WhyWords.Say(answer, PlanIndex.Of(plan)));
    }

    [Theory]
    [InlineData("nobody", "square", "W1")]
    [InlineData("bench", "lid", "W1")]
    [InlineData("bench", "square", "X9")]
    public async Task A_question_about_what_is_not_there_says_what_is(string gift, string part, string offcut)
    {
        var plan = await Requests.PlanOf(Requests.FourSquares);

        var error = await Assert.ThrowsAsync<ArgumentException>(() => AskAsync(plan, WhyQuestion.ThisOffcut(gift, part, offcut)));

        Assert.Contains("Found", error.Message);
        Assert.Contains("expected", error.Message);
    }

    [Fact]
    public async Task Every_offcut_of_the_example_can_be_asked_about()
    {
        var plan = await Requests.PlanOf(ExampleWorkshop.Request);
        var index = PlanIndex.Of(plan);

        foreach (var glueUp in plan.GlueUps.Take(3))
        {
            var answer = await Explainer.AnswerAsync(plan, WhyQuestion.ThisOffcut(glueUp.Gift, glueUp.Part, glueUp.Strips[0].Offcut), Requests.Quick with { Seconds = 0.5 }, TestContext.Current.CancellationToken);
            Assert.NotEmpty(WhyWords.Say(answer, index));
            Assert.All(answer.Costs, c => Assert.NotEqual(c.Now, c.Otherwise));
        }
    }

    private static Task<WhyAnswer> AskAsync(Plan plan, WhyQuestion question) =>
        Explainer.AnswerAsync(plan, question, Requests.Quick, TestContext.Current.CancellationToken);
}
