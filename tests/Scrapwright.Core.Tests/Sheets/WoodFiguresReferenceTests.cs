using Scrapwright.Core.Measures;
using Scrapwright.Core.Sheets;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Sheets;

public sealed class WoodFiguresReferenceTests
{
    // [WoodHandbook] Table 13-5: black walnut CR 0.00190, CT 0.00274; eq. 13-2 for 4 in and 100 mm over 6 %:
    // 4 · 0.00274 · 6 = 0.06576 in, 4 · 0.00190 · 6 = 0.0456 in; 100 · 0.00274 · 6 = 1.644 mm, 100 · 0.00190 · 6 = 1.14 mm.
    // Table 5-3b: 1010 lbf = 4492.7 N; specific gravity 0.55, so 1000 · 0.55 · 1.12 = 616 kg/m³ = 38.46 lb/ft³.
    [Theory]
    [InlineData(LengthUnit.Inch, "0.066 in", "0.046 in", "1010 lbf", "38 lb/ft³")]
    [InlineData(LengthUnit.Millimetre, "1.6 mm", "1.1 mm", "4490 N", "620 kg/m³")]
    public void Walnut_in_both_units(LengthUnit unit, string flat, string quarter, string hardness, string density) =>
        Assert.Equal([flat, quarter, hardness, density], WoodFigures.Of(SpeciesTable.Get("black-walnut"), unit).Select(figure => figure.Text));

    // Sugar maple: CT 0.00353, so 0.08472 in; 1450 lbf. The difference is that of the numbers shown: 0.085 − 0.066, 1450 − 1010.
    [Fact]
    public void Differences_are_those_of_the_numbers_shown()
    {
        var walnut = WoodFigures.Of(SpeciesTable.Get("black-walnut"), LengthUnit.Inch);
        var maple = WoodFigures.Of(SpeciesTable.Get("sugar-maple"), LengthUnit.Inch);

        Assert.Equal("+0.019 in", walnut[0].DifferenceTo(maple[0]));
        Assert.Equal("−440 lbf", maple[2].DifferenceTo(walnut[2]));
        Assert.Equal("the same", walnut[0].DifferenceTo(walnut[0]));
    }

    [Fact]
    public void What_is_not_known_is_said_and_has_no_difference()
    {
        var unknown = new WoodFigure("Hardness", null, "lbf", 0);

        Assert.Equal(("not known", ""), (unknown.Text, unknown.DifferenceTo(unknown with { ValuePerUnit = 5 })));
    }
}
