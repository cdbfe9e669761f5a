using CsCheck;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

public sealed class LabColourTests
{
    private static readonly Gen<SrgbColour> Screen = Gen.Select(Gen.Byte, Gen.Byte, Gen.Byte, (r, g, b) => new SrgbColour(r, g, b));

    [Fact]
    public void Every_screen_colour_comes_back_through_lab() =>
        Screen.Sample(colour => colour.ToLab().ToSrgb() == colour && colour.ToLab().IsInSrgbGamut);

    [Fact]
    public void A_colour_no_screen_shows_is_clipped_and_said_to_be_out()
    {
        var vivid = new LabColour(50, 120, 90);

        Assert.False(vivid.IsInSrgbGamut);
        Assert.Equal(255, vivid.ToSrgb().Red);
    }

    [Fact]
    public void Default_is_black() => Assert.Equal("#000000", default(LabColour).ToSrgb().Hex);

    [Fact]
    public void Difference_is_zero_only_for_the_same_colour() =>
        Gen.Select(Screen, Screen).Sample((one, other) =>
            ColourDifference.Ciede2000(one.ToLab(), other.ToLab()) == 0 == (one == other));
}
