using Scrapwright.Core.Finishing;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Plans;
using Scrapwright.Core.Tests.Sheets;

namespace Scrapwright.Core.Tests.Finishing;

public sealed class ConsumablesTests
{
    [Fact]
    public void Glue_finish_grits_and_rags_are_listed_in_this_order()
    {
        var (plan, designs) = SamplePlan.Build(new Shop(), 2);

        var used = Consumables.For(plan, designs);

        Assert.Equal(
            [ConsumableKind.Glue, ConsumableKind.Finish, ConsumableKind.Abrasive, ConsumableKind.Abrasive, ConsumableKind.Abrasive, ConsumableKind.Rag],
            used.Select(c => c.Kind));
        Assert.Equal(["P120", "P150", "P220"], used.Where(c => c.Kind == ConsumableKind.Abrasive).Select(c => c.What));
        Assert.All(used, c => Assert.True(c.Text.Length > 0 && c.Why.Length > 0));
    }

    [Fact]
    public void Glue_is_for_all_glue_ups_and_the_assembly_together()
    {
        var (plan, designs) = SamplePlan.Build(new Shop(), 2);

        var glue = Consumables.For(plan, designs)[0];

        // Lines as the advice has them, holes of two plates: 2 × 4 × π × 1/4 in × 3/8 in; bars: 2 × 2 laps with a floor and two cheeks of 3/8 in; bases: 4 mitred ends.
        var lines = plan.GlueUps.Sum(g => GlueUpAdvice.For(plan, g).GlueArea.SquareMillimetres);
        var squareInches = (8 * Math.PI * 0.25 * 0.375) + (2 * 2 * (NotchOpening + (2 * NotchDepth)) * 0.375) + (4 * Math.Sqrt(2) * 0.375 * 1);
        var metres2 = (lines + (squareInches * 645.16)) / 1e6;
        Assert.Equal(new Band((int)(146 * 1.2 * metres2), (int)Math.Ceiling(244 * 1.2 * metres2)), glue.Amount);
        Assert.Contains("2 glue-ups, assembling squares-stand", glue.Why, StringComparison.Ordinal);
    }

    private static double NotchOpening => SamplePlan.Bar.Notches[0].Opening.Inches;

    private static double NotchDepth => SamplePlan.Bar.Notches[0].Depth.Inches;

    [Fact]
    public void Each_finish_has_its_own_line_and_names_its_gifts()
    {
        var (plan, designs) = SamplePlan.Build(new Shop(), 2);
        designs = designs.SetItem(1, designs[1] with { Gift = designs[1].Gift with { Finish = "shellac" } });

        var finishes = Consumables.For(plan, designs).Where(c => c.Kind == ConsumableKind.Finish).ToArray();

        Assert.Equal(["drying oil (linseed or tung)", "shellac"], finishes.Select(f => f.What));
        Assert.StartsWith("squares-1: 3 coats on 152 in²", finishes[0].Why, StringComparison.Ordinal);
        Assert.StartsWith("squares-2: 3 coats on 152 in²", finishes[1].Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_metric_shop_reads_no_ounces()
    {
        var (inch, designs) = SamplePlan.Build(new Shop(), 1);
        var metric = inch with { Request = inch.Request with { Shop = new Shop { Unit = LengthUnit.Millimetre } } };

        Assert.Contains("oz", Consumables.For(inch, designs)[0].Text, StringComparison.Ordinal);
        Assert.Contains("fl oz", Consumables.For(inch, designs)[1].Text, StringComparison.Ordinal);
        Assert.DoesNotContain(Consumables.For(metric, designs), c => c.Text.Contains("oz", StringComparison.Ordinal) || c.Why.Contains("in²", StringComparison.Ordinal));
    }

    [Fact]
    public void What_the_table_does_not_know_is_named_without_an_amount()
    {
        var (plan, designs) = SamplePlan.Build(new Shop { Glue = "glue?", Finish = "finish?" }, 1);

        var used = Consumables.For(plan, designs);

        Assert.Equal("glue “glue?”", used[0].What);
        Assert.Null(used[0].Amount);
        Assert.Equal("finish “finish?”", used[1].What);
        Assert.Null(used[1].Amount);
        Assert.DoesNotContain(used, c => c.Kind == ConsumableKind.Rag);
    }

    [Fact]
    public void Gifts_that_are_not_made_use_nothing_up()
    {
        var (plan, designs) = SamplePlan.Build(new Shop(), 1);

        Assert.Empty(Consumables.For(plan with { Made = [], GlueUps = [] }, designs));
    }

    [Fact]
    public void A_plan_is_enough()
    {
        var plan = ExamplePlans.Squares;

        Assert.Equal(Consumables.For(plan, GiftDesigns.Derive(plan.Request.Gifts, plan.Request.Designs, plan.Request.Shop)), Consumables.For(plan));
        Assert.NotEmpty(Consumables.For(plan));
    }
}
