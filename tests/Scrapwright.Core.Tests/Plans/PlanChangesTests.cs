using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Tests.Plans;

public sealed class PlanChangesTests
{
    private static readonly Plan Plan = ExamplePlans.Squares;

    [Fact]
    public void Between_a_plan_and_itself_there_is_nothing() => Assert.Empty(PlanChanges.Between(Plan, Plan));

    [Fact]
    public void Another_order_is_told_with_the_offcuts()
    {
        var change = Assert.Single(PlanChanges.Between(Plan, PlanOrder.With(Plan, "G1", [3, 2, 1, 0])));

        Assert.Equal((ChangeKind.Order, "order of G1: M2, W2, M1, W1 from the lower edge"), (change.Kind, change.Text));
    }

    [Fact]
    public void Strips_that_change_places_are_told_one_by_one()
    {
        var g1 = Plan.GlueUps[0];
        var g2 = g1 with { Id = "G2", Strips = [.. g1.Strips.Select(s => s with { Offcut = s.Offcut + "x" })] };
        var former = Plan with { GlueUps = [g1, g2] };
        var plan = Plan with
        {
            GlueUps =
            [
                g1 with { Strips = g1.Strips.SetItem(1, g2.Strips[1]) },
                g2 with { Strips = g2.Strips.SetItem(1, g1.Strips[1] with { RoughWidth = g1.Strips[2].RoughWidth + g1.Strips[2].RoughWidth }).SetItem(0, g2.Strips[0] with { Offcut = "N1" }) },
            ],
        };

        Assert.Equal(
            ["strip of M1x goes to G1 instead of G2", "strip of M1, of another width, goes to G2 instead of G1", "G2: N1 instead of W1x", "offcut N1 is cut now"],
            PlanChanges.Between(former, plan).Where(c => c.Kind is ChangeKind.Strip or ChangeKind.Offcut).Select(c => c.Text));
    }

    [Fact]
    public void Gifts_glue_ups_boards_and_amounts_are_told()
    {
        var full = ExamplePlans.Full;
        var bare = full with { Made = [], GlueUps = [], Boards = [], Levels = [.. full.Levels.Select(l => l with { Value = 0 })] };

        var gone = PlanChanges.Between(full, bare).Select(c => c.Text).ToList();
        var come = PlanChanges.Between(bare, full).Select(c => c.Text).ToList();

        Assert.Contains("Elm is not made any more", gone);
        Assert.Contains("G1, for Elm, is not glued", gone);
        Assert.Contains("offcut M1 stays whole", gone);
        Assert.Contains(gone, c => c.EndsWith("fewer clamp loads", StringComparison.Ordinal) || c == "1 fewer clamp load");
        Assert.Contains("Elm is made now", come);
        Assert.Contains(come, c => c.StartsWith("G1 is new, for Elm: ", StringComparison.Ordinal));
        Assert.Contains("offcut M1 is cut now", come);
        Assert.Contains(come, c => c.EndsWith("board feet more wood", StringComparison.Ordinal));
    }
}
