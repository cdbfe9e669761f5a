using Scrapwright.Core.Fits;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;
using static Scrapwright.Core.Tests.Designs.Derivation;

namespace Scrapwright.Core.Tests.Fits;

/// <summary>Weights by hand. [WoodHandbook] Table 5-3b: specific gravity at 12 %, black walnut 0.55, sugar maple 0.63.</summary>
public sealed class GiftWeightReferenceTests
{
    // Four squares 4 × 4 × 3/8 in: 393.29 cm³, half of each wood, so 0.59 on average. At 12 % all year: 393.29 · 0.59 · 1.12 = 259.9 g, told as 260 g, 9.17 oz.
    [Fact]
    public void Four_squares_at_the_moisture_of_the_table()
    {
        var weight = Assert.Single(GiftWeights.Of(Tiles(12, 12)));

        Assert.Equal(("Tiles", 260, 10), (weight.Gift, weight.Grams, weight.Ounces));
        Assert.Equal(12, weight.MoisturePercent, 1e-6);
        Assert.Equal("about 10 oz", weight.InWords(new Shop()));
        Assert.Equal("about 260 g", weight.InWords(new Shop { Unit = LengthUnit.Millimetre }));
    }

    // Sized at 12 %, weighed at 6 %: the dry wood stays: 259.9 / 1.12 · 1.06 = 246.0 g, told as 250.
    [Fact]
    public void Wood_that_dries_loses_its_water() => Assert.Equal(250, Assert.Single(GiftWeights.Of(Tiles(12, 6))).Grams);

    // A rod stand of walnut for tiles of another gift, at 12 %. Plates 139.7 mm square, 12.7 thick: 247.855 cm³ each; four holes 9.525 through: 3.620 cm³; left 244.235.
    // Two of them by 0.55 · 1.12 = 0.616: 300.9 g. Rods of paper birch, 0.55: four of 9.525 · 76.2 long: 21.72 cm³ by 0.616: 13.4 g. Together 314.3, told as 315.
    [Fact]
    public void Holes_are_taken_off_and_rods_are_round()
    {
        var plan = Plan(12, 12, new Gift { Label = "S", Design = "rod-stand", Climate = "damp" }).Offcut("W", "black-walnut").Make("S", ("plate", "W W")).Build();

        Assert.Equal(315, Assert.Single(GiftWeights.Of(plan)).Grams);
    }

    // Slots of a U stand of walnut, at 12 %. Uprights 2 1/8 × 1 × 3/8 in: 13.058 cm³, four of them 52.233; bases 4 7/8 × 1 × 3/8: 29.957 each, less two slots
    // 9.625 · 25.4 · 4.7625: 1.164 each: 27.629, two 55.258; bars 4 × 3/4 × 3/8: 18.436 each, less two slots 25.5 · 9.525 · 4.7625: 1.157 each: 16.122, two 32.244.
    // Together 139.735 cm³ by 0.616: 86.1 g, told as 90.
    [Fact]
    public void Slots_are_taken_off()
    {
        var plan = Plan(12, 12, new Gift { Label = "U", Design = "u-stand", Climate = "damp" })
            .Offcut("W", "black-walnut").Make("U", ("left-upright", "W"), ("base", "W"), ("right-upright", "W"), ("bar", "W")).Build();

        Assert.Equal(90, Assert.Single(GiftWeights.Of(plan)).Grams);
    }

    // Definition: 16 oz = 453.59237 g.
    [Theory]
    [InlineData(450, "about 1 lb")]
    [InlineData(455, "about 1 lb 1 oz")]
    [InlineData(1000, "about 2 lb 4 oz")]
    public void Pounds_and_ounces(int grams, string words) => Assert.Equal(words, new GiftWeight { Gift = "", Grams = grams, MoisturePercent = 8 }.InWords(new Shop()));

    private static Core.Plans.Plan Tiles(double shopPercent, double homePercent) =>
        Plan(shopPercent, homePercent, new Gift { Label = "Tiles", Design = "striped-squares", Climate = "damp" })
            .Offcut("W", "black-walnut").Offcut("M", "sugar-maple").Make("Tiles", ("square", "W M")).Build();

    private static StandPlan Plan(double shopPercent, double homePercent, Gift gift)
    {
        var plan = new StandPlan { Shop = new Shop { Climate = "dry", OwnClimates = [new("dry", Airs.Steady(shopPercent).Months), new("damp", Airs.Steady(homePercent).Months)] } };
        plan.Gifts.Add(gift);
        return plan;
    }
}
