using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

public sealed class AcclimatisationReferenceTests
{
    // [Crank1975], plane sheet: Fourier numbers of the half thickness, from memory: half of the change at 0.197, nine tenths at 0.848.
    [Theory]
    [InlineData(50, 0.197)]
    [InlineData(90, 0.848)]
    public void Known_Fourier_numbers_are_met(double sharePercent, double fourierNumber) =>
        Assert.Equal(fourierNumber, Acclimatisation.FourierNumber(sharePercent), 0.0005);

    // By finite differences: an implicit scheme for the same slab, which shares nothing with the series.
    [Theory]
    [InlineData(0.02)]
    [InlineData(0.1)]
    [InlineData(0.3)]
    [InlineData(0.848)]
    public void The_series_agrees_with_a_slab_cut_into_layers(double fourierNumber) =>
        Assert.Equal(ByFiniteDifferences(fourierNumber), Acclimatisation.ShareReached(fourierNumber), 0.001);

    [Fact]
    public void At_first_the_share_grows_with_the_root_of_time() => Gen.Double[0.00001, 0.15].Sample(fourierNumber =>
        Math.Abs(Acclimatisation.ShareReached(fourierNumber) - 2 * Math.Sqrt(fourierNumber / Math.PI)) < 0.002);

    [Fact]
    public void The_share_grows_without_a_step() => Gen.Double[0.0001, 2].Sample(fourierNumber =>
        Acclimatisation.ShareReached(fourierNumber + 1e-6) >= Acclimatisation.ShareReached(fourierNumber)
        && Acclimatisation.ShareReached(fourierNumber + 1e-6) - Acclimatisation.ShareReached(fourierNumber) < 1e-4);

    [Fact]
    public void The_inverse_undoes_the_series() => Gen.Double[0.1, 99.9].Sample(share =>
        Math.Abs(Acclimatisation.ShareReached(Acclimatisation.FourierNumber(share)) * 100 - share) < 1e-6);

    [Fact]
    public void Twice_as_thick_takes_four_times_as_long()
    {
        Species cherry = SpeciesTable.Get("black-cherry");

        Assert.Equal(4 * Acclimatisation.DaysEstimate(cherry, Length.FromInches(1, 2)).Days, Acclimatisation.DaysEstimate(cherry, Length.FromInches(1)).Days, 1e-9);
    }

    // 0.848 · (12.7 mm)² / 10⁻¹⁰ m²/s by hand for a wood of specific gravity 0.50: 15.8 days.
    [Fact]
    public void An_inch_of_cherry_takes_about_a_fortnight()
    {
        AcclimatisationTime time = Acclimatisation.DaysEstimate(SpeciesTable.Get("black-cherry"), Length.FromInches(1));

        Assert.Equal(15.8, time.Days, 0.05);
        Assert.Equal("about 1 to 5 weeks (estimate)", time.InWords);
        Assert.Equal(90, Acclimatisation.SharePercentEstimate(SpeciesTable.Get("black-cherry"), Length.FromInches(1), time.Days), 1e-6);
    }

    [Theory]
    [InlineData(1, 1, "about 1 day (estimate)")]
    [InlineData(3, 12, "about 3 to 12 days (estimate)")]
    [InlineData(14, 56, "about 2 to 8 weeks (estimate)")]
    [InlineData(60, 240, "about 2 to 8 months (estimate)")]
    public void The_range_is_said_in_words(double leastDays, double mostDays, string words) =>
        Assert.Equal(words, new AcclimatisationTime(leastDays, leastDays, mostDays).InWords);

    [Fact]
    public void Dense_wood_is_slower_than_light() => Assert.True(
        Acclimatisation.DaysEstimate(SpeciesTable.Get("shagbark-hickory"), Length.FromInches(1)).Days
        > 2 * Acclimatisation.DaysEstimate(SpeciesTable.Get("eastern-white-pine"), Length.FromInches(1)).Days);

    [Theory]
    [InlineData(0)]
    [InlineData(100)]
    [InlineData(double.NaN)]
    public void A_share_that_is_never_reached_is_refused(double sharePercent) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Acclimatisation.FourierNumber(sharePercent));

    private static double ByFiniteDifferences(double fourierNumber)
    {
        // Half the sheet, symmetric in the middle: 200 layers, 4000 implicit steps, solved from the middle outwards.
        const int layers = 200, steps = 4000;
        double[] u = Enumerable.Repeat(1.0, layers).ToArray(), lower = new double[layers], right = new double[layers];
        double r = fourierNumber / steps * layers * layers;
        for (int step = 0; step < steps; step++)
        {
            for (int i = 0; i < layers; i++)
            {
                // The outer face stands half a layer beyond the last one and is dry from the start.
                double diagonal = 1 + (i == 0 ? r : i == layers - 1 ? 3 * r : 2 * r);
                double weight = i == 0 ? diagonal : diagonal - r * r / lower[i - 1];
                lower[i] = weight;
                right[i] = u[i] + (i == 0 ? 0 : r * right[i - 1] / lower[i - 1]);
            }

            u[layers - 1] = right[layers - 1] / lower[layers - 1];
            for (int i = layers - 2; i >= 0; i--)
            {
                u[i] = (right[i] + r * u[i + 1]) / lower[i];
            }
        }

        return 1 - u.Average();
    }
}
