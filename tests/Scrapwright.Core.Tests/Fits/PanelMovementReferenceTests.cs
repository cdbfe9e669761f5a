using Scrapwright.Core.Fits;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;
using static Scrapwright.Core.Tests.Designs.Derivation;
using static Scrapwright.Core.Tests.Fits.Airs;

namespace Scrapwright.Core.Tests.Fits;

/// <summary>Panels worked by hand with the coefficients of [WoodHandbook] Table 13-5: walnut 0.00190 radial, 0.00274 tangential; sugar maple 0.00165, 0.00353.</summary>
public sealed class PanelMovementReferenceTests
{
    private static readonly Climate Home = Year(7, 7, 8, 9, 10, 11, 12, 12, 11, 10, 9, 8);

    // Made at 9 %: driest 7 (−2), dampest 12 (+3). Widths: walnut 50 · 0.00274 = 0.137 per cent, maple 30 · 0.00353 = 0.1059.
    [Fact]
    public void Every_strip_moves_by_its_own_wood()
    {
        var panel = Striped(RingOrientation.Flat, RingOrientation.Flat);

        Assert.Equal([-0.274, -0.2118, -0.274], panel.Strips.Select(s => Mm(s.WidthInDriest)));
        Assert.Equal([0.411, 0.3177, 0.411], panel.Strips.Select(s => Mm(s.WidthInDampest)));
        Assert.Equal((-0.7598, 1.1397), (Mm(panel.WidthInDriest), Mm(panel.WidthInDampest)));
        Assert.Equal(Length.FromMillimetres(130), panel.Width);
        Assert.Equal((9, 7, 12), (panel.MadePercent, Math.Round(panel.DriestPercent, 6), Math.Round(panel.DampestPercent, 6)));
    }

    // Thickness 20 mm. Flat walnut beside flat maple, both radial: 20 · (0.00190 − 0.00165) · 3 = 0.015, not felt.
    // Flat walnut (radial 0.00190) beside quarter-sawn maple (tangential 0.00353): 20 · 0.00163 · 3 = 0.0978, felt.
    [Theory]
    [InlineData(RingOrientation.Flat, 0.015, 0.075, false)]
    [InlineData(RingOrientation.Quarter, 0.0978, 0.489, true)]
    public void Neighbours_that_move_unlike_leave_a_ridge(RingOrientation maple, double ridge, double percent, bool felt)
    {
        var panel = Striped(RingOrientation.Flat, maple);

        Assert.Equal([0, 1], panel.Neighbours.Select(n => n.First));
        Assert.All(panel.Neighbours, n => Assert.Equal(ridge, Mm(n.Ridge)));
        Assert.All(panel.Neighbours, n => Assert.Equal(percent, n.DifferencePercent, 1e-6));
        Assert.All(panel.Neighbours, n => Assert.Equal((felt, false), (n.Felt, n.IsUpTo)));
    }

    // Rings unknown: walnut from 0.00190 to 0.00274, maple from 0.00165 to 0.00353; at most 0.00353 − 0.00190 apart: 20 · 0.00163 · 3 = 0.0978.
    [Fact]
    public void Where_rings_are_unknown_the_ridge_is_the_most_it_can_be()
    {
        var panel = Striped(RingOrientation.Unknown, RingOrientation.Unknown);

        Assert.All(panel.Neighbours, n => Assert.Equal((0.0978, true), (Mm(n.Ridge), n.IsUpTo)));
    }

    [Fact]
    public void A_glue_up_of_a_plan_has_the_strips_of_its_blanks()
    {
        var plan = PlanFitsReferenceTests.Plan(new Gift { Label = "Tiles", Design = "striped-squares", Climate = "damp" })
            .Offcut("W", "black-walnut").Offcut("M", "sugar-maple", RingOrientation.Quarter).Make("Tiles", ("square", "W M W M")).Build();

        var panel = PanelMovement.Of(plan, plan.GlueUps[0]);

        // 4 in in four strips of 25.4; 6 to 10 %: 25.4 · 4 · (2 · 0.00274 + 2 · 0.00165) = 0.892048.
        Assert.Equal(["G1.1", "G1.2", "G1.3", "G1.4"], panel.Strips.Select(s => s.Piece));
        Assert.Equal(["W", "M", "W", "M"], panel.Strips.Select(s => s.Offcut));
        Assert.Equal(0.892048, Mm(panel.WidthInDampest));
        Assert.Equal(panel.WidthInDampest, panel.WidthInDriest);
        Assert.Equal(panel.WidthInDampest, Assert.Single(PanelMovement.Of(plan)).WidthInDampest);
    }

    // A resawn panel is trimmed layer by layer, so its strips are as wide as in the first layer: 25.4 · (0.00274 + 0.00165) · 4 = 0.446024.
    [Fact]
    public void A_resawn_glue_up_has_the_strips_of_its_layers()
    {
        var plan = PlanFitsReferenceTests.Plan(new Gift { Label = "Tiles", Design = "striped-squares", Climate = "damp" })
            .Offcut("W", "black-walnut").Offcut("M", "sugar-maple", RingOrientation.Quarter).Make("Tiles", ("square", "W M")).Build();
        var step = plan.Steps[0];
        var inch = Length.FromInches(1);
        var layer = step.Works[0].Out[0] with { Id = "G1/1", Width = inch * 2, Lanes = [new("W", inch), new("M", inch)] };

        var panel = PanelMovement.Of(plan with { Steps = [step with { Works = step.Works.Add(step.Works[0] with { Out = [layer] }) }] })[0];

        Assert.Equal((inch * 2, 0.446024), (panel.Width, Mm(panel.WidthInDampest)));
    }

    [Fact]
    public void The_parts_of_the_width_add_up() =>
        Assert.Equal(Striped(RingOrientation.Rift, RingOrientation.Unknown) is var p ? Mm(p.WidthInDampest) : 0, Mm(Length.Sum(p.Strips.Select(s => s.WidthInDampest))));

    // docs/science/cupping.md: flat-sawn strips cup, quarter-sawn do not.
    [Fact]
    public void Flat_sawn_strips_cup_and_quarter_sawn_do_not()
    {
        var panel = Striped(RingOrientation.Flat, RingOrientation.Quarter);

        Assert.Equal(Cupping.Estimate(SpeciesTable.Get("black-walnut"), RingOrientation.Flat, Length.FromMillimetres(50), 9, panel.DampestPercent), panel.Strips[0].Cup);
        Assert.True(panel.Strips[1].Cup!.Value.Depth.IsZero);
    }

    private static PanelMovement Striped(RingOrientation walnut, RingOrientation maple) =>
        PanelMovement.Of([Across("black-walnut", walnut, 50), Across("sugar-maple", maple, 30), Across("black-walnut", walnut, 50)], Length.FromMillimetres(20), 9, Home);

    private static double Mm(Length length) => Math.Round(length.Millimetres, 6);
}
