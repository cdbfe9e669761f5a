using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Milling;

public sealed class ResawDecisionTests
{
    private static readonly Shop Shop = new();

    private static readonly Part Square = new()
    {
        Key = "square",
        Title = "square",
        Kind = PartKind.Panel,
        Count = 4,
        Length = Length.FromInches(4),
        Width = Length.FromInches(4),
        Thickness = Length.FromInches(3, 8),
    };

    // Common practice, no source: 4/4 that flattens to 13/16 does not give two layers of 3/8 once the saw and the clean-up have had their share.
    [Fact]
    public void Thirteen_sixteenths_do_not_give_two_layers_of_three_eighths()
    {
        var decision = new ResawDecision(
            Length.FromInches(13, 16), 2, Shop.Bandsaw.Kerf, Shop.Allowances.ResawCleanUp.Mean, Length.FromInches(3, 8));

        Assert.Equal(Length.FromInches(11, 32), decision.Layer);
        Assert.False(decision.Works);
        Assert.Equal(Length.FromInches(-1, 32), decision.Over);
    }

    // Common practice, no source: 3/8 comes out of 4/4 by planing; two layers come out of 5/4 and not out of 4/4.
    [Theory]
    [InlineData(1, 1, 1, true)]
    [InlineData(1, 1, 2, false)]
    [InlineData(5, 4, 2, true)]
    [InlineData(5, 4, 3, false)]
    [InlineData(8, 4, 3, true)]
    public void Rough_stock_gives_so_many_layers_of_three_eighths(int numerator, int denominator, int layers, bool works)
    {
        var offcut = new Offcut
        {
            Label = "M1",
            Species = "sugar-maple",
            Length = Length.FromInches(18),
            Width = Length.FromInches(2),
            Thickness = Length.FromInches(numerator, denominator),
        };
        var milled = StripMilling.Thickness(offcut, offcut.Length, offcut.Width, Shop);

        Assert.Equal(works, milled.End >= new PanelNeeds(Square, 4, layers, Shop).StripThickness(milled.Spread));
    }

    [Fact]
    public void The_most_layers_are_the_last_that_work()
    {
        var target = Length.FromInches(3, 8);
        var most = ResawDecision.MostLayers(Length.FromInches(2), Shop.Bandsaw.Kerf, Shop.Allowances.ResawCleanUp.Mean, target);

        Assert.Equal(4, most);
        Assert.Equal(0, ResawDecision.MostLayers(Length.FromInches(1, 4), Shop.Bandsaw.Kerf, Shop.Allowances.ResawCleanUp.Mean, target));
    }
}
