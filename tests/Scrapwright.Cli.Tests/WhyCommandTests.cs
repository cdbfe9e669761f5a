using Scrapwright.Core.Plans;

namespace Scrapwright.Cli.Tests;

public sealed class WhyCommandTests(ExamplePlan example) : IClassFixture<ExamplePlan>
{
    [Fact]
    public async Task It_says_what_it_would_cost_to_do_without_an_offcut()
    {
        var glueUp = PlanJson.Read(await File.ReadAllTextAsync(example.Plan)).GlueUps[0];

        var ran = await Program.RunAsync("why", example.Plan, glueUp.Gift, "--offcut", glueUp.Strips[0].Offcut, "--seconds", "2");

        Assert.Equal(0, ran.Code);
        Assert.StartsWith($"Without {glueUp.Strips[0].Offcut}", ran.Output, StringComparison.Ordinal);
        ran.IsPlain();
    }

    [Theory]
    [InlineData("expected one that is not made", "nobody")]
    [InlineData("expected one that is made", "nobody", "--resaw")]
    [InlineData("expected one of --offcut, --resaw and --glue-ups", "nobody", "--resaw", "--glue-ups")]
    [InlineData("above 0", "nobody", "--seconds", "0")]
    public async Task A_question_that_cannot_be_asked_says_what_can(string expected, params string[] arguments)
    {
        var ran = await Program.RunAsync(["why", example.Plan, .. arguments]);

        Assert.Equal(2, ran.Code);
        Assert.Contains(expected, ran.Error);
        ran.IsPlain();
    }
}
