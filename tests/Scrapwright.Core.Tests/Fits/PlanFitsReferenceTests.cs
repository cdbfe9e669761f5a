using Scrapwright.Core.Fits;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;
using static Scrapwright.Core.Tests.Designs.Derivation;

namespace Scrapwright.Core.Tests.Fits;

/// <summary>
/// Stands worked by hand, fitted at 6 % and living at 10 %: ΔM = 4. Coefficients of [WoodHandbook] Table 13-5: black walnut 0.00190 radial, 0.00274 tangential;
/// sugar maple 0.00165, 0.00353; white oak 0.00180, 0.00365; paper birch 0.00219, 0.00304; American beech 0.00190, 0.00431.
/// </summary>
public sealed class PlanFitsReferenceTests
{
    // A square 4 in wide, half walnut and half maple, flat sawn: 101.6 · (0.00274 + 0.00353) / 2 · 4 = 1.274064 wider.
    // A birch rod 3/8 in, rings unknown: 9.525 · 0.00304 · 4 = 0.115824 at most, 9.525 · 0.00219 · 4 = 0.083439 at least.
    // Tightest: 3.175 − 1.274064 − 0.115824 = 1.785112. Loosest, the square turned with its grain along the opening: 3.175 − 0.083439 = 3.091561.
    [Fact]
    public void Between_the_front_rods()
    {
        var fit = Assert.Single(PlanFits.Of(RodStand()), f => f.Fit.Key == "front-rods");

        Assert.All(fit.Season.Months, m => Assert.Equal(1.785112, m.Clearance.Millimetres, 1e-6));
        Assert.All(fit.Season.Months, m => Assert.Equal(3.091561, m.MostClearance.Millimetres, 1e-6));
        Assert.Equal("Stand", fit.Gift);
    }

    // Four squares 3/8 in thick, flat sawn, so radially; the walnut stands higher: 4 · 9.525 · 0.00190 · 4 = 0.28956.
    // Two plates of walnut 1/2 in thick swell into the room: 2 · 12.7 · 0.00190 · 4 = 0.19304. 12.7 − 0.28956 − 0.19304 = 12.2174.
    [Fact]
    public void Between_the_plates()
    {
        var fit = Assert.Single(PlanFits.Of(RodStand()), f => f.Fit.Key == "plates");

        Assert.All(fit.Season.Months, m => Assert.Equal(12.2174, m.Clearance.Millimetres, 1e-6));
        Assert.All(fit.Season.Months, m => Assert.Equal(m.Clearance.Millimetres, m.MostClearance.Millimetres, 1e-6));
    }

    // Uprights of quarter-sawn oak, 3/8 in thick, so tangentially: 2 · 9.525 · 0.00365 · 4 = 0.27813. Squares of beech, flat: 101.6 · 0.00431 · 4 = 1.751584.
    // 3.175 − 0.27813 − 1.751584 = 1.145286.
    [Fact]
    public void Between_the_uprights()
    {
        var plan = Plan(new Gift { Label = "U", Design = "u-stand", Options = Options(("with-squares", "yes")), Climate = "damp" })
            .Offcut("O", "white-oak", RingOrientation.Quarter).Offcut("B", "american-beech")
            .Make("U", ("left-upright", "O"), ("base", "O"), ("right-upright", "O"), ("bar", "O"), ("square", "B B B")).Build();

        var fit = Assert.Single(PlanFits.Of(plan));

        Assert.All(fit.Season.Months, m => Assert.Equal(1.145286, m.Clearance.Millimetres, 1e-6));
    }

    // Nobody says what the squares are of; of the pile beech moves most: 101.6 · 0.00431 · 4 = 1.751584, and the uprights of oak as above.
    [Fact]
    public void Squares_that_nobody_makes_are_the_worst_of_the_pile()
    {
        var plan = Plan(new Gift { Label = "U", Design = "u-stand", Climate = "damp" })
            .Offcut("O", "white-oak", RingOrientation.Quarter).Offcut("B", "american-beech").Offcut("W", "black-walnut")
            .Make("U", ("left-upright", "O"), ("base", "O"), ("right-upright", "O"), ("bar", "O")).Build();

        var season = Assert.Single(PlanFits.Of(plan)).Season;

        Assert.All(season.Months, m => Assert.Equal(1.145286, m.Clearance.Millimetres, 1e-6));
        Assert.Contains(season.Notes, n => n.Contains("wood of the square is not known", StringComparison.Ordinal));
    }

    // Half-laps: a base 1 in deep across flat maple: 25.4 · 0.00353 · 4 = 0.358648; 3 in: 1.075944, more than 1/32 in = 0.79375.
    // A bar on edge, 3/8 in thick, flat: 9.525 · 0.00165 · 4 = 0.062865.
    [Theory]
    [InlineData("1 in", 0.358648, false)]
    [InlineData("3 in", 1.075944, true)]
    public void Half_laps_cross_the_grain(string depth, double mismatch, bool needsCare)
    {
        var plan = Plan(new Gift { Label = "U", Design = "u-stand", Options = Options(("depth", depth), ("size", "8 in")), Climate = "damp" })
            .Offcut("M", "sugar-maple").Make("U", ("left-upright", "M"), ("base", "M"), ("right-upright", "M"), ("bar", "M")).Build();

        var joints = CrossGrain.Of(plan);

        Assert.Equal(["half-lap", "half-lap"], joints.Select(j => j.Joint.Kind));
        Assert.Equal(mismatch, joints[0].Mismatch.Millimetres, 1e-6);
        Assert.Equal(0.062865, joints[1].Mismatch.Millimetres, 1e-6);
        Assert.Equal((needsCare, false), (joints[0].NeedsCare, joints[1].NeedsCare));
    }

    // A rod in a plate of walnut 1/2 in thick: 12.7 · 0.00190 · 4 = 0.09652; its own diameter as above 0.115824.
    [Fact]
    public void Rods_cross_the_plates_and_the_plates_move_alike()
    {
        var joints = CrossGrain.Of(RodStand());

        Assert.Equal([0.09652, 0.115824], joints.Select(j => Math.Round(j.Mismatch.Millimetres, 6)));
        Assert.DoesNotContain(joints, j => j.NeedsCare);
    }

    internal static StandPlan Plan(params Gift[] gifts)
    {
        var plan = new StandPlan
        {
            Shop = new Shop { Climate = "dry", OwnClimates = [new("dry", Airs.Steady(6).Months), new("damp", Airs.Steady(10).Months)] },
        };
        plan.Gifts.AddRange(gifts);
        return plan;
    }

    internal static Plan RodStand(params (string Key, string Value)[] options) =>
        Plan(new Gift { Label = "Tiles", Design = "striped-squares" }, new Gift { Label = "Stand", Design = "rod-stand", Options = Options([("holds", "Tiles"), .. options]), Climate = "damp" })
            .Offcut("W", "black-walnut").Offcut("M", "sugar-maple").Make("Tiles", ("square", "W M")).Make("Stand", ("plate", "W W")).Build();
}
