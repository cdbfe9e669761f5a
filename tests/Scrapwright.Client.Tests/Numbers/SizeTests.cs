using Bunit;
using Scrapwright.Client.Numbers;
using Scrapwright.Core.Measures;

namespace Scrapwright.Client.Tests.Numbers;

public sealed class SizeTests : ScreenContext
{
    // 14 3/8 in by hand: 14 whole inches, 3 over 8.
    [Fact]
    public void A_mixed_size_sets_whole_numerator_and_denominator_apart()
    {
        var size = Show(Length.FromInches(115, 8));

        Assert.Equal("14", size.Find(".whole").TextContent);
        Assert.Equal("3", size.Find(".numerator").TextContent);
        Assert.Equal("8", size.Find(".denominator").TextContent);
        Assert.Equal("in", size.Find(".unit").TextContent);
    }

    [Theory]
    [InlineData(115, 8, "14 and 3/8 inches")]
    [InlineData(7, 8, "7/8 inch")]
    [InlineData(1, 1, "1 inch")]
    [InlineData(2, 1, "2 inches")]
    [InlineData(0, 1, "0 inches")]
    [InlineData(-3, 2, "minus 1 and 1/2 inches")]
    public void A_listener_hears_words(long numerator, long denominator, string expected)
    {
        var size = Show(Length.FromInches(numerator, denominator));

        Assert.Equal(expected, size.Find(".visually-hidden").TextContent);
        Assert.Equal("true", size.Find("[aria-hidden]").GetAttribute("aria-hidden"));
    }

    [Fact]
    public void A_size_just_short_of_an_inch_carries_into_the_whole()
    {
        var size = Show(Length.FromPicometres(25_399_999_999));

        Assert.Equal("1", size.Find(".whole").TextContent);
        Assert.Empty(size.FindAll(".fraction"));
    }

    [Fact]
    public void A_fraction_alone_has_no_whole_number()
    {
        var size = Show(Length.FromInches(13, 16));

        Assert.Empty(size.FindAll(".whole"));
        Assert.Equal("13", size.Find(".numerator").TextContent);
    }

    [Fact]
    public void Millimetres_are_set_as_a_decimal()
    {
        var size = Show(Length.FromMicrometres(9_525), new Ruler(LengthUnit.Millimetre, 32));

        Assert.Equal("9.5", size.Find(".whole").TextContent);
        Assert.Equal("9.5 millimetres", size.Find(".visually-hidden").TextContent);
        Assert.Equal("9.525 mm", size.Find(".size").GetAttribute("title"));
    }

    private IRenderedComponent<Size> Show(Length value, Ruler? ruler = null) =>
        Render<Size>(p => p.Add(s => s.Value, value).AddCascadingValue(ruler ?? Ruler.Default));
}
