using Scrapwright.Core.Fits;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Fits;

public sealed class PileMoistureTests
{
    [Theory]
    [InlineData(null)]
    [InlineData(8.9)]
    [InlineData(7.1)]
    public void A_pile_near_the_shop_needs_no_rest(double? pilePercent) => Assert.Null(PileMoisture.Of(Plan(pilePercent)));

    // [WoodHandbook] Table 13-5: maple, two strips of 2 in, 50.8 · 0.00353 · (8 − 12) = −0.717296; walnut moves less.
    [Fact]
    public void A_damp_pile_has_to_lie_and_its_worst_strip_shrinks()
    {
        var moisture = PileMoisture.Of(Plan(12))!;

        Assert.Equal((12, 8, 6), (moisture.PilePercent, Math.Round(moisture.ShopPercent, 6), moisture.Month));
        Assert.Equal(("G1.2", Length.FromInches(2)), (moisture.Strip, moisture.StripWidth));
        Assert.Equal(-0.717296, moisture.StripChange.Millimetres, 1e-6);
        Assert.Equal(Acclimatisation.DaysEstimate(SpeciesTable.Get("sugar-maple"), Length.FromInches(1)), moisture.Time);
        Assert.Equal(
            $"Let the wood lie in the shop for {moisture.Time.InWords} before you mill it, with air on all sides. The meter says 12.0 %; in June it settles at 8.0 %. Until then G1.2, 2 in wide, would shrink by 0.029 in.",
            moisture.InWords(new Shop()));
    }

    [Fact]
    public void Without_a_date_the_driest_month_is_taken() => Assert.Equal(1, PileMoisture.Of(Plan(12, null))!.Month);

    private static Plan Plan(double? pilePercent, int? due = 6)
    {
        var plan = new StandPlan { Shop = new Shop { Climate = "dry", OwnClimates = [new("dry", Airs.Steady(8).Months)], PileMoisturePercent = pilePercent } };
        plan.Gifts.Add(new Gift { Label = "Tiles", Design = "striped-squares", Due = due is { } month ? new DateOnly(2027, month, 1) : null });
        return plan.Offcut("W", "black-walnut").Offcut("M", "sugar-maple").Make("Tiles", ("square", "W M")).Build();
    }
}
