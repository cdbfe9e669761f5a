using Scrapwright.Client.Numbers;
using Scrapwright.Core.Measures;

namespace Scrapwright.Client.Tests.Numbers;

public sealed class TemperaturesTests
{
    // 32 °F is 0 °C and 212 °F is 100 °C by definition of the scale; −40 is the same in both.
    [Theory]
    [InlineData("212", LengthUnit.Inch, 100)]
    [InlineData("100", LengthUnit.Millimetre, 100)]
    [InlineData("32 °F", LengthUnit.Millimetre, 0)]
    [InlineData("0°C", LengthUnit.Inch, 0)]
    [InlineData("−40", LengthUnit.Inch, -40)]
    [InlineData("-40 c", LengthUnit.Inch, -40)]
    [InlineData("21,5 C", LengthUnit.Inch, 21.5)]
    [InlineData("50 °", LengthUnit.Inch, 10)]
    public void Read_takes_either_scale_with_its_mark_and_the_shops_without(string text, LengthUnit unit, double celsius) =>
        Assert.Equal(celsius, Temperatures.Read(text, unit)!.Value, 1e-9);

    [Theory]
    [InlineData("")]
    [InlineData("F")]
    [InlineData("warm")]
    [InlineData("1e3")]
    [InlineData("20 K")]
    public void Read_refuses_what_is_no_temperature(string text) => Assert.Null(Temperatures.Read(text, LengthUnit.Inch));

    [Fact]
    public void Text_is_read_back_to_the_tenth()
    {
        for (var tenths = -400; tenths <= 400; tenths++)
        {
            foreach (var unit in Enum.GetValues<LengthUnit>())
            {
                Assert.Equal(tenths / 10.0, Temperatures.Read(Temperatures.Text(tenths / 10.0, unit), unit)!.Value, 0.06);
            }
        }
    }

    [Theory]
    [InlineData("900", LengthUnit.Inch, "900 lb")]
    [InlineData("4000 N", LengthUnit.Inch, "899 lb")]
    [InlineData("4 kN", LengthUnit.Millimetre, "4000 N")]
    [InlineData("900 lbf", LengthUnit.Millimetre, "4003 N")]
    public void A_force_is_read_in_either_unit_and_shown_in_the_shops(string text, LengthUnit unit, string shown) =>
        Assert.Equal(shown, Forces.Text(Forces.Read(text, unit)!.Value, unit));

    [Theory]
    [InlineData("")]
    [InlineData("strong")]
    [InlineData("5 kg")]
    public void A_force_without_sense_is_refused(string text) => Assert.Null(Forces.Read(text, LengthUnit.Inch));
}
