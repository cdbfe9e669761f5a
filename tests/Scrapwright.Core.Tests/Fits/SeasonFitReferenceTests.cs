using Scrapwright.Core.Designs;
using Scrapwright.Core.Fits;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;
using static Scrapwright.Core.Tests.Fits.Airs;

namespace Scrapwright.Core.Tests.Fits;

/// <summary>Cases worked by hand from the coefficients of [WoodHandbook] Table 13-5 and eq. 13-2, ΔD = D · C · ΔM; the arithmetic stands beside each.</summary>
public sealed class SeasonFitReferenceTests
{
    // [WoodHandbook] Table 13-5: black cherry C_T 0.00248; sugar maple C_T 0.00353, C_R 0.00165; black walnut C_T 0.00274; American beech C_T 0.00431.
    [Theory]
    [InlineData("black-cherry", RingOrientation.Flat, 300, 8, 12, 2.976)] // 300 · 0.00248 · 4
    [InlineData("sugar-maple", RingOrientation.Flat, 304.8, 6, 10, 4.303776)] // 304.8 · 0.00353 · 4; 0.16944 in of 12 in
    [InlineData("sugar-maple", RingOrientation.Quarter, 304.8, 6, 10, 2.01168)] // 304.8 · 0.00165 · 4; 0.07920 in of 12 in
    [InlineData("black-walnut", RingOrientation.Flat, 250, 12, 7, -3.425)] // 250 · 0.00274 · (7 − 12)
    [InlineData("american-beech", RingOrientation.Flat, 200, 9, 6, -2.586)] // 200 · 0.00431 · (6 − 9)
    public void One_board_moves_as_worked_by_hand(string species, RingOrientation rings, double width, double fromPercent, double toPercent, double change)
    {
        var season = Fit([Still(width + 10)], [Across(species, rings, width)], fromPercent, toPercent);

        Assert.All(season.Months, m => Assert.Equal(width + change, m.Held.Millimetres, 1e-6));
        Assert.All(season.Months, m => Assert.Equal(10 - change, m.Clearance.Millimetres, 1e-6));
    }

    // At 45° between the rings: half of each. 100 · (0.00165 + 0.00353) / 2 · 4 = 1.036.
    [Fact]
    public void Rift_sawn_maple_moves_by_the_mean() =>
        Assert.Equal(101.036, Fit([Still(110)], [Across("sugar-maple", RingOrientation.Rift, 100)], 6, 10).Months[0].Held.Millimetres, 1e-6);

    // A thickness moves the other way: flat sawn radially. 20 · 0.00165 · 4 = 0.132; quarter sawn tangentially: 20 · 0.00353 · 4 = 0.2824.
    [Theory]
    [InlineData(RingOrientation.Flat, 20.132)]
    [InlineData(RingOrientation.Quarter, 20.2824)]
    public void A_thickness_moves_across_to_its_width(RingOrientation rings, double expected)
    {
        var thickness = new MovingWood("sugar-maple", rings, GrainDirection.Thickness, Length.FromMillimetres(20));

        Assert.Equal(expected, Fit([Still(25)], [thickness], 6, 10).Months[0].Held.Millimetres, 1e-6);
    }

    // Strips add up: walnut 50 · 0.00274 · 4 = 0.548, maple 30 · 0.00353 · 4 = 0.4236, walnut 0.548; together 1.5196.
    [Fact]
    public void Strips_of_a_panel_add_up()
    {
        var season = Fit(
            [Still(132)],
            [Across("black-walnut", RingOrientation.Flat, 50), Across("sugar-maple", RingOrientation.Flat, 30), Across("black-walnut", RingOrientation.Flat, 50)], 8, 12);

        Assert.Equal(131.5196, season.Months[5].Held.Millimetres, 1e-6);
        Assert.Equal(0.4804, season.Months[5].Clearance.Millimetres, 1e-6);
    }

    // Below 6 and above 14 % by eq. 13-3 from the shrinkage of Table 4-3, black walnut tangential 7.8 %: 30 · 100 / 7.8 = 384.615.
    // 5 to 6 %: 1 / (384.615 − 30 + 5) = 0.00278075; 6 to 14 %: 8 · 0.00274 = 0.02192; 14 to 15 %: 1 / (384.615 − 30 + 14) = 0.00271285.
    // 1.00278075 · 1.02192 · 1.00271285 = 1.02754177.
    [Fact]
    public void A_change_past_the_range_of_the_coefficients_goes_on_by_shrinkage() =>
        Assert.Equal(102.7542, Fit([Still(110)], [Across("black-walnut", RingOrientation.Flat, 100)], 5, 15).Months[0].Held.Millimetres, 0.0001);

    // Purpleheart has no coefficient: eq. 13-3 with [WoodHandbook] Table 4-4, tangential 6.1 %: 4 / (3000 / 6.1 − 30 + 8) = 0.00851453.
    [Fact]
    public void A_wood_without_coefficient_goes_by_shrinkage() =>
        Assert.Equal(100.8514, Fit([Still(110)], [Across("purpleheart", RingOrientation.Flat, 100)], 8, 12).Months[0].Held.Millimetres, 0.0001);

    // [WoodHandbook] Table 4-2, 70 °F (21.1 °C): 30 % 6.2, 50 % 9.2, 75 % 14.4. Sugar maple, 4 in: 101.6 · 0.00353 · (9.2 − 6.2) = 1.076 mm;
    // a tenth of a per cent of moisture, as the table is printed, is 0.036 mm.
    [Fact]
    public void A_square_swells_from_a_dry_shop_to_a_damper_home()
    {
        var trial = new FitTrial
        {
            Holder = [Still(104.775)],
            Held = [Across("sugar-maple", RingOrientation.Flat, 101.6)],
            FittedIn = OfAir([.. Enumerable.Repeat(new ClimateMonth(21.1, 30), 12)]),
            LivesIn = OfAir([.. Enumerable.Repeat(new ClimateMonth(21.1, 50), 11), new ClimateMonth(21.1, 75)]),
        };

        var season = SeasonFit.Between(trial);

        Assert.Equal(6.2, season.FittedMoisturePercent, 0.05);
        Assert.Equal(9.2, season.Months[0].MoisturePercent, 0.05);
        Assert.Equal(14.4, season.Months[11].MoisturePercent, 0.05);
        Assert.Equal(3.175 - 1.076, season.Months[0].Clearance.Millimetres, 0.036);
    }

    // The opening that never jams: what goes in at its largest and the least clearance. 101.6 + 101.6 · 0.00353 · 4 + 0.4 = 103.434592.
    [Fact]
    public void The_smallest_opening_is_what_goes_in_at_its_largest_and_the_least_clearance()
    {
        var trial = Trial([Still(103)], [Across("sugar-maple", RingOrientation.Flat, 101.6)], 6, 10) with { Least = Length.FromMicrometres(400), Most = Length.FromMillimetres(3) };

        var season = SeasonFit.Between(trial);

        Assert.Equal(103.434592, season.SmallestOpening.Millimetres, 1e-6);
        Assert.Equal(101.6 + 1.434592 + 3, season.LargestOpening!.Value.Millimetres, 1e-6);
        var jams = Assert.IsType<FitVerdict.Jams>(season.Verdict);
        Assert.Equal(0.434592, jams.By.Millimetres, 1e-6);
        Assert.True(jams.Stuck);
    }

    // A lid in a box whose side moves too: lid 200 · 0.00274 · 4 = 2.192, opening 201 · 0.00252 · 4 would be another wood; here both walnut,
    // opening flat 201 · 0.00274 · 4 = 2.20296, so the clearance goes from 1 to 1.01096.
    [Fact]
    public void A_lid_and_a_box_of_one_wood_move_together() =>
        Assert.Equal(1.01096, Fit([Across("black-walnut", RingOrientation.Flat, 201)], [Across("black-walnut", RingOrientation.Flat, 200)], 8, 12).Months[0].Clearance.Millimetres, 1e-6);

    private static SeasonFit Fit(MovingWood[] holder, MovingWood[] held, double fromPercent, double toPercent) => SeasonFit.Between(Trial(holder, held, fromPercent, toPercent));

    private static FitTrial Trial(MovingWood[] holder, MovingWood[] held, double fromPercent, double toPercent) =>
        new() { Holder = [.. holder], Held = [.. held], FittedIn = Steady(fromPercent), LivesIn = Steady(toPercent) };
}
