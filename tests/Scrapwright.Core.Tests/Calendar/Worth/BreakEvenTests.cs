using Scrapwright.Core.Calendar.Worth;

namespace Scrapwright.Core.Tests.Calendar.Worth;

public sealed class BreakEvenTests
{
    [Fact]
    public void It_is_that_of_a_published_example() =>
        // [MakeOrBuyExample]: making costs 10,125 once and 12.50 each, buying 14.75 each: x = 10125 / (14.75 - 12.5) = 4500.
        Assert.Equal(4500, BreakEven.Pieces(10_125m, 14.75m - 12.50m));

    [Theory]
    [InlineData(10, 3, 4)]
    [InlineData(9, 3, 3)]
    [InlineData(0, 3, 0)]
    [InlineData(-5, 3, 0)]
    [InlineData(-5, 0, 0)]
    public void It_is_rounded_up_and_never_below_zero(int cost, int saved, int pieces) => Assert.Equal(pieces, BreakEven.Pieces(cost, saved));

    [Theory]
    [InlineData(10, 0)]
    [InlineData(10, -1)]
    public void What_saves_nothing_never_pays(int cost, int saved) => Assert.Null(BreakEven.Pieces(cost, saved));

    [Fact]
    public void A_number_beyond_all_use_is_none() => Assert.Null(BreakEven.Pieces(decimal.MaxValue, 1));
}
