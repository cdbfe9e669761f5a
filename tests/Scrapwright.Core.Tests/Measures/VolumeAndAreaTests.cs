using System.Text.Json;
using CsCheck;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Tests.Measures;

public sealed class VolumeAndAreaTests
{
    private static readonly Gen<Length> Side = Gen.Long[0, 3_000_000_000_000].Select(Length.FromPicometres);

    // Common practice, no source: a board foot is 144 cubic inches, as a board 12 in × 12 in × 1 in.
    [Fact]
    public void A_board_a_foot_square_and_an_inch_thick_is_a_board_foot() =>
        Assert.Equal(1, Volume.Of(Length.FromFeet(1), Length.FromFeet(1), Length.FromInches(1)).BoardFeet, 12);

    [Fact]
    public void Floating_values_are_in_the_named_unit()
    {
        Assert.Equal(24, Volume.Of(Length.FromMillimetres(2), Length.FromMillimetres(3), Length.FromMillimetres(4)).CubicMillimetres, 9);
        Assert.Equal(6, Area.Of(Length.FromMillimetres(2), Length.FromMillimetres(3)).SquareMillimetres, 9);
    }

    [Fact]
    public void A_board_cut_in_two_keeps_its_volume_and_area() =>
        Gen.Select(Side, Side, Side, Side).Sample((a, b, width, thickness) =>
            Volume.Of(a + b, width, thickness) == Volume.Sum([Volume.Of(a, width, thickness), Volume.Of(b, width, thickness)])
            && Area.Of(a + b, width) - Area.Of(a, width) == Area.Of(b, width)
            && Area.Of(a, width) * 3 == 3 * Area.Of(a, width)
            && (Volume.Of(a, width, thickness) < Volume.Of(b, width, thickness)) == (Volume.Of(a, width, thickness).CompareTo(Volume.Of(b, width, thickness)) < 0));

    [Fact]
    public void Json_is_a_string_of_digits_and_keeps_all_of_them()
    {
        var volume = Volume.Of(Length.FromMillimetres(1), Length.FromMillimetres(1), Length.FromMillimetres(1));

        Assert.Equal("\"1000000000000000000000000000\"", JsonSerializer.Serialize(volume));
        Gen.Select(Side, Side, Side).Sample((a, b, c) =>
            JsonSerializer.Deserialize<Volume>(JsonSerializer.Serialize(Volume.Of(a, b, c))) == Volume.Of(a, b, c)
            && JsonSerializer.Deserialize<Area>(JsonSerializer.Serialize(Area.Of(a, b))) == Area.Of(a, b));
    }

    [Theory]
    [InlineData("5")]
    [InlineData("\"5.0\"")]
    [InlineData("\"1,000\"")]
    [InlineData("\"\"")]
    [InlineData("null")]
    public void Json_refuses_the_rest(string json)
    {
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<Volume>(json));
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<Area>(json));
    }

    [Fact]
    public void Beyond_the_range_throws()
    {
        var kilometre = Length.FromMillimetres(1_000_000);

        Assert.Throws<OverflowException>(() => Volume.Of(kilometre, kilometre, kilometre));
    }
}
