using Scrapwright.Core.Finishing;

namespace Scrapwright.Core.Tests.Finishing;

public sealed class GritReferenceTests
{
    // [GritChart]: mean particle size in µm, all rows of both scales. The second number is [GritPage], for CAMI 120 and 150 [MakersSheets]; 0 where none was read.
    [Theory]
    [InlineData(GritScale.Fepa, "P12", 1815, 1815)]
    [InlineData(GritScale.Fepa, "P16", 1324, 1324)]
    [InlineData(GritScale.Fepa, "P20", 1000, 1000)]
    [InlineData(GritScale.Fepa, "P24", 764, 764)]
    [InlineData(GritScale.Fepa, "P30", 642, 642)]
    [InlineData(GritScale.Fepa, "P36", 538, 538)]
    [InlineData(GritScale.Fepa, "P40", 425, 425)]
    [InlineData(GritScale.Fepa, "P50", 336, 336)]
    [InlineData(GritScale.Fepa, "P60", 269, 269)]
    [InlineData(GritScale.Fepa, "P80", 201, 201)]
    [InlineData(GritScale.Fepa, "P100", 162, 162)]
    [InlineData(GritScale.Fepa, "P120", 125, 125)]
    [InlineData(GritScale.Fepa, "P150", 100, 0)]
    [InlineData(GritScale.Fepa, "P180", 82, 0)]
    [InlineData(GritScale.Fepa, "P220", 68, 0)]
    [InlineData(GritScale.Fepa, "P240", 58.5, 0)]
    [InlineData(GritScale.Fepa, "P280", 52.2, 0)]
    [InlineData(GritScale.Fepa, "P320", 46.2, 0)]
    [InlineData(GritScale.Fepa, "P360", 40.5, 0)]
    [InlineData(GritScale.Fepa, "P400", 35, 0)]
    [InlineData(GritScale.Fepa, "P500", 30.2, 0)]
    [InlineData(GritScale.Fepa, "P600", 25.8, 0)]
    [InlineData(GritScale.Fepa, "P800", 21.8, 0)]
    [InlineData(GritScale.Fepa, "P1000", 18.3, 0)]
    [InlineData(GritScale.Fepa, "P1200", 15.3, 0)]
    [InlineData(GritScale.Fepa, "P1500", 12.6, 0)]
    [InlineData(GritScale.Fepa, "P2000", 10.3, 0)]
    [InlineData(GritScale.Fepa, "P2500", 8.4, 0)]
    [InlineData(GritScale.Cami, "24", 708, 715)]
    [InlineData(GritScale.Cami, "30", 632, 638)]
    [InlineData(GritScale.Cami, "36", 530, 535)]
    [InlineData(GritScale.Cami, "40", 425, 428)]
    [InlineData(GritScale.Cami, "50", 348, 351)]
    [InlineData(GritScale.Cami, "60", 265, 268)]
    [InlineData(GritScale.Cami, "80", 190, 192)]
    [InlineData(GritScale.Cami, "100", 140, 141)]
    [InlineData(GritScale.Cami, "120", 115, 116)]
    [InlineData(GritScale.Cami, "150", 92, 93)]
    [InlineData(GritScale.Cami, "180", 82, 0)]
    [InlineData(GritScale.Cami, "220", 68, 0)]
    [InlineData(GritScale.Cami, "240", 53, 0)]
    [InlineData(GritScale.Cami, "320", 36, 0)]
    [InlineData(GritScale.Cami, "360", 28, 0)]
    [InlineData(GritScale.Cami, "400", 23, 0)]
    [InlineData(GritScale.Cami, "500", 20, 0)]
    [InlineData(GritScale.Cami, "600", 16, 0)]
    [InlineData(GritScale.Cami, "800", 12.6, 0)]
    [InlineData(GritScale.Cami, "1000", 10.3, 0)]
    public void Particles_are_those_of_the_chart(GritScale scale, string mark, double micrometres, double second)
    {
        var grit = GritTable.Get(mark);

        Assert.Equal(scale, grit.Scale);
        Assert.Equal(micrometres, grit.ParticleMicrometres);
        Assert.Equal(second, grit.SecondMicrometres ?? 0);
        Assert.Equal(second > 0, grit.SecondSource is not null);
    }

    [Fact]
    public void The_table_has_no_other_rows() => Assert.Equal(48, GritTable.All.Length);

    // By hand from the chart: 125/68, 201/125, 100/68, 68/46.2, and across the scales 35/23.
    [Theory]
    [InlineData("P120", "P220", 1.838)]
    [InlineData("P80", "P120", 1.608)]
    [InlineData("P150", "P220", 1.471)]
    [InlineData("P220", "P320", 1.472)]
    [InlineData("P400", "400", 1.522)]
    [InlineData("P180", "180", 1)]
    public void Ratios_of_two_grits_are_those_worked_out_by_hand(string coarse, string fine, double ratio) =>
        Assert.Equal(ratio, GritTable.Get(coarse).ParticleMicrometres / GritTable.Get(fine).ParticleMicrometres, 0.0005);

    [Theory]
    [InlineData(GritScale.Fepa)]
    [InlineData(GritScale.Cami)]
    public void Each_scale_runs_from_coarse_to_fine(GritScale scale)
    {
        var sizes = GritTable.All.Where(g => g.Scale == scale).Select(g => g.ParticleMicrometres).ToArray();

        Assert.Equal(sizes.OrderDescending(), sizes);
        Assert.Equal(sizes.Distinct(), sizes);
    }

    [Theory]
    [InlineData("p120", "P120")]
    [InlineData(" P 120 ", "P120")]
    [InlineData("120 grit", "120")]
    [InlineData("P220grit", "P220")]
    public void A_grit_is_found_as_people_write_it(string written, string mark) => Assert.Equal(mark, GritTable.Find(written)?.Mark);

    [Theory]
    [InlineData("")]
    [InlineData("grit")]
    [InlineData("P125")]
    [InlineData("fine")]
    [InlineData("P1200000000")]
    [InlineData("P0120")]
    public void Anything_else_is_no_grit(string written) => Assert.Null(GritTable.Find(written));
}
