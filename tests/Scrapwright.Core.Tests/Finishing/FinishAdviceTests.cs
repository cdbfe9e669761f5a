using Scrapwright.Core.Designs;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Sheets;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Finishing;

public sealed class FinishAdviceTests
{
    private static (FinishAdvice Finish, SandingAdvice Sanding) Advise(Shop shop, string finish = "", int? month = null)
    {
        var (plan, designs) = SamplePlan.Build(shop, 1);
        var product = ((DesignOutcome.Derived)designs[0].Outcome).Product;
        var gift = designs[0].Gift with { Finish = finish };
        return (FinishAdvice.For(plan, gift, product, month), SandingAdvice.For(plan, gift, product));
    }

    // Four squares of 4 × 4 × 3/8 in: 4 × (2 × 16 + 4 × 1.5) = 152 in².
    private static readonly Area FourSquares = Area.Of(Length.FromInches(152), Length.FromInches(1));

    [Fact]
    public void All_faces_edges_and_ends_are_sanded_and_finished()
    {
        var (finish, sanding) = Advise(new Shop());

        Assert.Equal(FourSquares, finish.Area);
        Assert.Equal(FourSquares, sanding.Area);
    }

    [Fact]
    public void The_quantity_is_area_times_coats_over_coverage_and_a_fifth_more()
    {
        // 152 in² = 0.098064 m²; 3 coats, 9 to 13 m²/L, × 1.2: 27.2 to 39.2 ml, outwards to fives.
        Assert.Equal(new Band(25, 40), Advise(new Shop()).Finish.Millilitres);
    }

    [Fact]
    public void A_gift_names_its_own_finish_or_takes_the_shops()
    {
        Assert.Equal("drying-oil", Advise(new Shop()).Finish.Finish?.Key);
        Assert.Equal("shellac", Advise(new Shop(), "Shellac").Finish.Finish?.Key);
        Assert.Equal("oil-wax", Advise(new Shop { Finish = "oil-wax" }).Finish.Finish?.Key);
    }

    [Fact]
    public void Oily_rags_are_warned_of_with_every_drying_oil_and_with_no_other_finish() =>
        Assert.All(FinishTable.All, f => Assert.Equal(f.IsDryingOil, Advise(new Shop(), f.Key).Finish.Cautions.Contains(OilyRags.Caution)));

    [Fact]
    public void A_finish_that_is_not_known_leaves_its_figures_out_and_warns_of_rags_all_the_same()
    {
        var (finish, sanding) = Advise(new Shop(), "grandfather's secret");

        Assert.Null(finish.Finish);
        Assert.Null(finish.Millilitres);
        Assert.Empty(finish.Steps);
        Assert.Equal(FourSquares, finish.Area);
        Assert.Contains(finish.Cautions, c => c.Contains("grandfather's secret", StringComparison.Ordinal));
        Assert.Contains(finish.Cautions, c => c.Contains("oily rags catch fire", StringComparison.Ordinal));
        Assert.Equal("P220", SandingAdvice.Grits(sanding.Sequence)[^1].Mark);
    }

    [Theory]
    [InlineData(9, true)]
    [InlineData(10, false)]
    [InlineData(30, false)]
    [InlineData(31, true)]
    public void A_shop_too_cold_or_too_warm_is_a_caution(double celsius, bool warns)
    {
        var shop = new Shop { Climate = "mine", OwnClimates = [new OwnClimate("mine", [.. Enumerable.Repeat(new ClimateMonth(celsius, 50), 12)])] };

        Assert.Equal(warns, Advise(shop, month: 7).Finish.Cautions.Any(c => c.Contains("in the shop", StringComparison.Ordinal)));
        Assert.DoesNotContain(Advise(shop).Finish.Cautions, c => c.Contains("in the shop", StringComparison.Ordinal));
    }

    [Fact]
    public void The_last_grit_is_that_of_the_finish()
    {
        Assert.Equal("P120, P150, P220", Advise(new Shop()).Sanding.Sequence.ToString());
        Assert.Equal("P120, P180", Advise(new Shop(), "hard-wax").Sanding.Sequence.ToString());
    }

    [Fact]
    public void A_missing_grit_is_a_caution_and_so_is_a_mark_no_standard_knows()
    {
        var shop = new Shop { Abrasives = new Abrasives { Grits = ["P120", "P220", "the brown one"] } };

        var sanding = Advise(shop).Sanding;

        Assert.Contains(sanding.Cautions, c => c.StartsWith("Grit to buy first: ", StringComparison.Ordinal));
        Assert.Contains("Not known as grits: the brown one.", sanding.Cautions);
        Assert.Equal(3, sanding.Discs.Length);
    }

    [Theory]
    [InlineData(5000, 1)] // 152 in² are 980.6 cm².
    [InlineData(980, 2)]
    [InlineData(981, 1)]
    [InlineData(100, 10)]
    [InlineData(0, 1)]
    public void Discs_are_rounded_up(int wearsAfterCm2, int count) =>
        Assert.All(Advise(new Shop { Abrasives = new Abrasives { WearsAfterCm2 = wearsAfterCm2 } }).Sanding.Discs, d => Assert.Equal(count, d.Count));

    [Fact]
    public void Rods_are_finished_round_and_at_the_ends()
    {
        var (plan, designs) = SamplePlan.Build(new Shop(), 1);
        var product = SamplePlan.Stand with { Assembly = [new(Operation.Finish, Station.Finishing, ["rod"], "Oil.", [])] };

        // Four rods, 1/4 × 2 1/2 in: 4 × (π × 0.25 × 2.5 + 2 × π × 0.125²) in².
        var squareInches = 4 * ((Math.PI * 0.25 * 2.5) + (2 * Math.PI * 0.125 * 0.125));
        Assert.Equal(squareInches * 645.16, FinishAdvice.For(plan, designs[^1].Gift, product).Area.SquareMillimetres, 1e-6);
    }
}
