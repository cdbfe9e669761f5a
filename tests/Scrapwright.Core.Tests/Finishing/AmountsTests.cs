using Scrapwright.Core.Finishing;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Tests.Finishing;

public sealed class AmountsTests
{
    [Fact]
    public void An_inch_shop_sees_ounces_beside_grams_and_millilitres()
    {
        // 1 oz = 28.35 g, 1 US fl oz = 29.57 ml.
        Assert.Equal("8–14 g (0.3–0.5 oz)", Amounts.Grams(new(8, 14), LengthUnit.Inch));
        Assert.Equal("8–14 g", Amounts.Grams(new(8, 14), LengthUnit.Millimetre));
        Assert.Equal("60–90 ml (2.0–3.0 fl oz)", Amounts.Millilitres(new(60, 90), LengthUnit.Inch));
        Assert.Equal("1–4 g (up to 0.1 oz)", Amounts.Grams(new(1, 4), LengthUnit.Inch));
        Assert.Equal("1 g (up to 0.1 oz)", Amounts.Grams(new(1, 1), LengthUnit.Inch));
        Assert.Equal("454 g (16 oz)", Amounts.Grams(new(454, 454), LengthUnit.Inch));
    }

    [Fact]
    public void Pressure_force_temperature_and_area_are_in_the_makers_units()
    {
        Assert.Equal("100–150 psi", Amounts.Pressure(new(690, 1030), LengthUnit.Inch));
        Assert.Equal("0.7–1.0 MPa", Amounts.Pressure(new(690, 1030), LengthUnit.Millimetre));
        Assert.Equal("1800–4250 lbf", Amounts.Force(new(8000, 19000), LengthUnit.Inch));
        Assert.Equal("8–19 kN", Amounts.Force(new(8000, 19000), LengthUnit.Millimetre));
        Assert.Equal("70 °F", Amounts.Temperature(21, LengthUnit.Inch));
        Assert.Equal("21 °C", Amounts.Temperature(21, LengthUnit.Millimetre));
        Assert.Equal("73 in²", Amounts.Area(Area.Of(Length.FromInches(73), Length.FromInches(1)), LengthUnit.Inch));
        Assert.Equal("8 ft²", Amounts.Area(Area.Of(Length.FromInches(48), Length.FromInches(24)), LengthUnit.Inch));
        Assert.Equal("471 cm²", Amounts.Area(Area.Of(Length.FromInches(73), Length.FromInches(1)), LengthUnit.Millimetre));
        Assert.Equal("1.2 m²", Amounts.Area(Area.Of(Length.FromMillimetres(1200), Length.FromMillimetres(1000)), LengthUnit.Millimetre));
    }

    [Theory]
    [InlineData(30, 60, "30–60 min")]
    [InlineData(720, 1440, "12–24 h")]
    [InlineData(45, 240, "45 min to 4 h")]
    [InlineData(1440, 2880, "1–2 days")]
    [InlineData(240, 1440, "4–24 h")]
    public void Minutes_are_said_as_people_say_them(int least, int most, string text) => Assert.Equal(text, Amounts.Minutes(new(least, most)));

    [Theory]
    [InlineData(24, 24, "24 h")]
    [InlineData(24, 168, "1–7 days")]
    [InlineData(6, 24, "6–24 h")]
    [InlineData(6, 168, "6 h to 7 days")]
    public void Hours_are_said_as_people_say_them(int least, int most, string text) => Assert.Equal(text, Amounts.Hours(new(least, most)));
}
