using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

public sealed class CuppingReferenceTests
{
    // Geometry, not the formula: points of a flat line across the rings are moved in polar coordinates round the pith, radius by the radial strain, angle by the difference.
    [Fact]
    public void The_hollow_is_that_of_rings_that_shrink() => Gen.Select(Gen.Double[10, 80], Gen.Double[60, 300], Gen.Double[6, 14], Gen.Double[6, 14]).Sample((widthMm, radiusMm, from, to) =>
    {
        Species maple = SpeciesTable.Get("sugar-maple");
        double tangential = 0.00353 * (to - from), radial = 0.00165 * (to - from);
        double HeightOf(double x)
        {
            double r = Math.Sqrt(x * x + radiusMm * radiusMm) * (1 + radial);
            double angle = Math.Atan2(x, radiusMm) * (1 + tangential) / (1 + radial);
            return r * Math.Cos(angle);
        }

        double hollow = HeightOf(widthMm / 2) - HeightOf(0);
        double ours = Cupping.Estimate(maple, RingOrientation.Flat, Length.FromMillimetresRounded(widthMm), from, to, Length.FromMillimetresRounded(radiusMm))!.Value.BarkSideHollowMm;
        return Math.Abs(hollow - ours) < 0.001 + 0.2 * Math.Abs(hollow);
    });

    // By hand: walnut 100 mm wide from 12 to 7 %: 100²·(0.00274 − 0.00190)·5/(4·100) = 0.105 mm.
    [Fact]
    public void A_drying_strip_goes_hollow_on_the_bark_side()
    {
        CupTendency cup = Estimate(RingOrientation.Flat, 12, 7);

        Assert.Equal(0.105, cup.BarkSideHollowMm, 1e-9);
        Assert.Equal("slight cup, bark side hollow (estimate)", cup.InWords);
        Assert.Equal(Length.FromMicrometres(105), cup.Depth);
    }

    [Fact]
    public void A_strip_that_takes_up_water_goes_hollow_on_the_heart_side()
    {
        CupTendency cup = Estimate(RingOrientation.Unknown, 7, 12);

        Assert.Equal(-0.105, cup.BarkSideHollowMm, 1e-9);
        Assert.Equal("slight cup, heart side hollow (estimate)", cup.InWords);
    }

    [Fact]
    public void Rift_cups_half_and_quarter_not_at_all()
    {
        Assert.Equal(0.0525, Estimate(RingOrientation.Rift, 12, 7).BarkSideHollowMm, 1e-9);
        Assert.Equal("stays flat (estimate)", Estimate(RingOrientation.Quarter, 12, 7).InWords);
    }

    [Fact]
    public void A_wide_green_board_cups_markedly() => Assert.Equal(
        "marked cup, bark side hollow (estimate)",
        Cupping.Estimate(SpeciesTable.Get("american-beech"), RingOrientation.Flat, Length.FromMillimetres(180), 40, 8)!.Value.InWords);

    [Fact]
    public void A_strip_wider_than_its_tree_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Cupping.Estimate(SpeciesTable.Get("black-walnut"), RingOrientation.Flat, Length.FromMillimetres(200), 12, 7));

    private static CupTendency Estimate(RingOrientation rings, double from, double to) =>
        Cupping.Estimate(SpeciesTable.Get("black-walnut"), rings, Length.FromMillimetres(100), from, to)!.Value;
}
