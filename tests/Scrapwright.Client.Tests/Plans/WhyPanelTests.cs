using System.Collections.Immutable;
using Bunit;
using Scrapwright.Client.Plans;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Why;
using Scrapwright.Core.Tests.Fits;

namespace Scrapwright.Client.Tests.Plans;

public sealed class WhyPanelTests : ScreenContext
{
    private static readonly Plan Plan = Tiles();

    [Fact]
    public void Every_question_has_a_button_and_the_answer_is_told()
    {
        var panel = Show(PlanReader.QuestionsAbout(Plan.GlueUps[0]));
        Far.Answer = new WhyAnswer
        {
            Question = WhyQuestion.Resawing(Plan.GlueUps[0].Gift, Plan.GlueUps[0].Part),
            CanBeOtherwise = true,
            IsProven = true,
            Costs = [new LevelCost(LevelKind.ClampLoads, 1, 2)],
            Layers = 1,
        };

        panel.FindAll("button").Single(b => b.TextContent == "Why not resaw?").Click();

        panel.WaitForAssertion(() => Assert.Equal("Resawn: 1 clamp load more. All other gifts stay as they are.", panel.Find("[role=status]").TextContent));
        Assert.Equal(Plan.GlueUps[0].Strips.Select(s => s.Offcut).Distinct().Count(), panel.FindAll("option").Count);
    }

    [Fact]
    public void Without_the_server_it_says_so()
    {
        var panel = Show([WhyQuestion.NotMade("X")]);
        Far.IsCutOff = true;

        panel.Find("button").Click();

        panel.WaitForAssertion(() => Assert.Contains("out of reach", panel.Find("[role=status]").TextContent));
    }

    private static Plan Tiles()
    {
        var plan = new StandPlan();
        plan.Gifts.Add(new Gift { Label = "Tiles", Design = "striped-squares" });
        return plan.Offcut("W", "black-walnut").Offcut("M", "sugar-maple").Make("Tiles", ("square", "M W W M")).Build();
    }

    private IRenderedComponent<WhyPanel> Show(ImmutableArray<WhyQuestion> questions) => Render<WhyPanel>(p => p
        .Add(c => c.Reader, new PlanReader(Plan)).Add(c => c.Questions, questions).Add(c => c.About, "G1"));
}
