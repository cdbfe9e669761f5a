using Scrapwright.Core.Finishing;

namespace Scrapwright.Core.Tests.Finishing;

public sealed class BandTests
{
    [Fact]
    public void A_band_is_the_right_way_round_and_not_below_zero()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Band(3, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Band(-1, 2));
    }

    [Fact]
    public void Two_bands_join_at_their_outer_ends() => Assert.Equal(new Band(1, 9), new Band(1, 4).Or(new Band(3, 9)));

    [Fact]
    public void A_band_of_one_figure_is_written_once()
    {
        Assert.Equal("24", new Band(24, 24).ToString());
        Assert.Equal("3–10", new Band(3, 10).ToString());
    }
}
