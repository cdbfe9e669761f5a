using System.Collections.Immutable;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Sheets;
using Scrapwright.Core.Wood;
using static Scrapwright.Core.Measures.Length;

namespace Scrapwright.Core.Tests.Finishing;

public sealed class GlueUpAdviceTests
{
    private static GlueUpAdvice Advise(Shop shop, string species, int strips = 2, Length? overlap = null, int clamps = 4, int? month = null)
    {
        var (plan, _) = SamplePlan.Build(shop, 1, strips);
        var glueUp = plan.GlueUps[0] with
        {
            Overlap = overlap ?? FromInches(25),
            ThicknessLadder = plan.GlueUps[0].ThicknessLadder with { Start = FromInches(1) },
            ClampsNeeded = clamps,
        };
        ImmutableArray<Offcut> pile = [.. plan.Request.Pile.Select(o => o with { Species = species })];
        return GlueUpAdvice.For(plan with { Request = plan.Request with { Pile = pile } }, glueUp, month);
    }

    // [ClampArticle2021]: an edge of 25 in² at 150 psi takes 3750 lb; 1 lbf = 4.4482216 N. White pine is low density: 100 to 150 psi in whole tens of kPa.
    [Fact]
    public void Force_is_pressure_times_the_area_of_one_line()
    {
        var advice = Advise(new Shop(), "eastern-white-pine", strips: 6);

        Assert.Equal(5, advice.Lines);
        Assert.Equal(Area.Of(FromInches(25), FromInches(1)), advice.LineArea);
        Assert.Equal(new Band(690, 1030), advice.Kilopascals);
        Assert.InRange(advice.Newtons!.Value.Most, 3750 * 4.4482216 * 0.99, 3750 * 4.4482216 * 1.01);
    }

    [Fact]
    public void The_plans_clamps_share_the_force()
    {
        var advice = Advise(new Shop(), "eastern-white-pine", clamps: 4);

        // 690 kPa on 25 in² (0.016129 m²) are 11129 N.
        Assert.Equal(11129 / 4, advice.NewtonsEach!.Value.Least);
    }

    [Fact]
    public void Absurd_sizes_do_not_overflow() => Assert.NotNull(Advise(new Shop(), "sugar-maple", overlap: FromMillimetres(1_000_000_000)).Newtons);

    [Fact]
    public void Mass_is_all_lines_times_spread_and_a_fifth_more()
    {
        var advice = Advise(new Shop(), "eastern-white-pine", strips: 6);

        // 5 × 25 in² = 125 in² = 0.080645 m²; × 146 and 244 g/m² × 1.2 = 14.1 and 23.6 g, outwards to whole grams.
        Assert.Equal(new Band(14, 24), advice.Grams);
    }

    [Fact]
    public void Woods_of_two_classes_span_both()
    {
        var (plan, _) = SamplePlan.Build(new Shop(), 1, 2);

        // Black walnut (0.55) is medium, sugar maple (0.63) high.
        Assert.Equal(new Band(860, 2070), GlueUpAdvice.For(plan, plan.GlueUps[0]).Kilopascals);
    }

    [Theory]
    [InlineData(4000, 3, 5)] // 690 and 1030 kPa on 25 in² are 11.1 and 16.6 kN.
    [InlineData(17000, 1, 1)]
    [InlineData(1000, 12, 17)] // More than the six on the rack: what is missing counts too.
    public void Clamps_by_force_are_counted_upwards(int newtonsEach, int least, int most)
    {
        var shop = new Shop { Clamps = [new("bar", FromInches(24), 6, newtonsEach)] };

        Assert.Equal(new Band(least, most), Advise(shop, "eastern-white-pine").ClampsByForce);
    }

    [Fact]
    public void The_strongest_clamps_that_reach_come_first()
    {
        var shop = new Shop { Clamps = [new("weak", FromInches(24), 6, 1000), new("strong", FromInches(24), 2, 5000), new("short", FromInches(1), 9, 50000)] };

        // 11.1 kN: two strong ones give 10, two weak the rest; 16.6 kN takes seven weak ones, one more than there are: one strong one to buy.
        Assert.Equal(new Band(4, 9), Advise(shop, "eastern-white-pine").ClampsByForce);
    }

    [Fact]
    public void More_clamps_by_force_than_planned_is_a_caution()
    {
        Assert.Contains(Advise(new Shop(), "sugar-maple", clamps: 3).Cautions, c => c.Contains("The plan counts on 3 clamps; by force", StringComparison.Ordinal));
        Assert.DoesNotContain(Advise(new Shop(), "eastern-white-pine", clamps: 3).Cautions, c => c.Contains("by force", StringComparison.Ordinal));
    }

    [Fact]
    public void No_clamp_that_reaches_is_a_caution()
    {
        var advice = Advise(new Shop { Clamps = [] }, "sugar-maple");

        Assert.Null(advice.ClampsByForce);
        Assert.Contains("No clamp on the rack reaches across.", advice.Cautions);
    }

    [Fact]
    public void The_caul_fills_what_the_outer_strip_lacks()
    {
        // Four clamps on 15 in stand 5 in apart: 2 1/2 in to the glue line, of which the narrower outer strip has 1 1/8 in. 1 3/8 in goes up to 1 1/2 in.
        var advice = Advise(new Shop(), "sugar-maple", overlap: FromInches(15));

        Assert.Equal(FromInches(5), advice.ClampGap);
        Assert.Equal(FromInches(3, 2), advice.Caul);
    }

    [Fact]
    public void The_gap_between_clamps_is_never_above_the_shops() => Assert.Equal(FromInches(6), Advise(new Shop(), "sugar-maple", overlap: FromInches(30)).ClampGap);

    [Fact]
    public void Many_joints_are_glued_in_goes_and_few_at_once()
    {
        Assert.Equal(1, Advise(new Shop(), "sugar-maple", strips: 2).Goes);

        var many = Advise(new Shop(), "sugar-maple", strips: 12);

        Assert.True(many.Goes > 1);
        Assert.Contains(many.Cautions, c => c.Contains($"Glue it in {many.Goes} parts", StringComparison.Ordinal));
        Assert.Equal(1, Advise(new Shop { Glue = "epoxy" }, "sugar-maple", strips: 12).Goes);
    }

    [Fact]
    public void The_month_asked_sets_the_temperature()
    {
        var cold = new OwnClimate("my shed", [.. Enumerable.Range(1, 12).Select(m => new ClimateMonth(m, 60))]);
        var shop = new Shop { OwnClimates = [cold], Climate = "my shed" };

        var advice = Advise(shop, "sugar-maple", month: 4);

        Assert.Equal(4, advice.TemperatureCelsius);
        Assert.IsType<ClampTime.TooCold>(advice.Time);
        Assert.Contains("Too cold at 39 °F: glue, wood and air need 50 °F or more.", advice.Cautions);
        Assert.Equal(21, Advise(shop, "sugar-maple").TemperatureCelsius);
        Assert.Equal(21, Advise(shop with { Climate = "the moon" }, "sugar-maple", month: 4).TemperatureCelsius);
        Assert.Equal(21, Advise(shop, "sugar-maple", month: 13).TemperatureCelsius);
    }

    [Fact]
    public void Oily_wood_is_a_caution_with_what_to_do()
    {
        Assert.Contains(Advise(new Shop(), "teak").Cautions, c => c.StartsWith("Oily: teak. ", StringComparison.Ordinal) && c.Contains("epoxy", StringComparison.Ordinal));
        Assert.DoesNotContain(Advise(new Shop(), "sugar-maple").Cautions, c => c.StartsWith("Oily", StringComparison.Ordinal));
    }

    [Fact]
    public void A_glue_that_is_not_known_leaves_its_figures_out_and_says_so()
    {
        var advice = Advise(new Shop { Glue = "the blue bottle" }, "teak", strips: 6);

        Assert.Null(advice.Glue);
        Assert.Null(advice.Grams);
        Assert.Null(advice.Kilopascals);
        Assert.Null(advice.Newtons);
        Assert.Null(advice.Time);
        Assert.Contains(advice.Cautions, c => c.Contains("the blue bottle", StringComparison.Ordinal));
        Assert.Equal(5, advice.Lines);
        Assert.Contains(advice.Facts, f => f.Name == "Glue" && f.Text.Contains("its label says how much", StringComparison.Ordinal));
    }

    [Fact]
    public void A_wood_that_is_not_known_leaves_pressure_out_and_says_so()
    {
        var advice = Advise(new Shop(), "unobtainium");

        Assert.Null(advice.Kilopascals);
        Assert.Contains(advice.Cautions, c => c.Contains("unobtainium", StringComparison.Ordinal));
    }

    [Fact]
    public void A_single_strip_needs_no_glue()
    {
        var advice = Advise(new Shop(), "teak", strips: 1);

        Assert.Equal(0, advice.Lines);
        Assert.Null(advice.Grams);
        Assert.Empty(advice.Facts);
        Assert.Empty(advice.Cautions);
    }

    [Fact]
    public void Facts_are_in_the_makers_units()
    {
        var inch = Advise(new Shop(), "eastern-white-pine", strips: 6).Facts;
        var metric = Advise(new Shop { Unit = LengthUnit.Millimetre }, "eastern-white-pine", strips: 6).Facts;

        Assert.Equal("100–150 psi, 2500–3750 lbf in all, 3–5 clamps by force", inch.Single(f => f.Name == "Press").Text);
        Assert.Equal("0.7–1.0 MPa, 11–16.5 kN in all, 3–5 clamps by force", metric.Single(f => f.Name == "Press").Text);
        Assert.Equal("white or yellow glue (PVA): 14–24 g (0.5–0.8 oz) for 5 lines, 125 in²", inch[0].Text);
        Assert.Equal("30–60 min at 21 °C, plane it after 24 h", metric[^1].Text);
    }
}
