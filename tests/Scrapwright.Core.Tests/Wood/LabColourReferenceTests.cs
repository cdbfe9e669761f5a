using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

public sealed class LabColourReferenceTests
{
    // CIELAB (D65, 2 degrees) of the screen primaries and white, as several public colour programs' tests print them; they follow from [Iec61966] and [Cie15].
    // Tolerance 0.03: those programs use matrices of seven digits, the standard has four.
    [Theory]
    [InlineData(255, 255, 255, 100.0, 0.0, 0.0)]
    [InlineData(255, 0, 0, 53.2408, 80.0925, 67.2032)]
    [InlineData(0, 255, 0, 87.7347, -86.1827, 83.1793)]
    [InlineData(0, 0, 255, 32.2970, 79.1875, -107.8602)]
    [InlineData(0, 0, 0, 0.0, 0.0, 0.0)]
    public void Screen_primaries_have_their_published_lab(byte red, byte green, byte blue, double l, double a, double b)
    {
        var screen = new SrgbColour(red, green, blue);

        LabColour lab = screen.ToLab();

        Assert.Equal(l, lab.L, 0.03);
        Assert.Equal(a, lab.A, 0.03);
        Assert.Equal(b, lab.B, 0.03);
        Assert.Equal(screen, new LabColour(l, a, b).ToSrgb());
    }

    // Middle grey, by hand: 128/255 is linear 0.2158605, and 116 · 0.2158605^(1/3) − 16 = 53.585.
    [Fact]
    public void Middle_grey_is_808080() => Assert.Equal("#808080", new LabColour(53.585, 0, 0).ToSrgb().Hex);
}
