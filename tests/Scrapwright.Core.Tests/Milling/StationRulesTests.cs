using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Milling;

public sealed class StationRulesTests
{
    private static readonly Shop Shop = new();

    private static StationRuling Rule(Operation operation, long length, long width, Length thickness, Shop? shop = null) =>
        StationRules.Rule(operation, Length.FromInches(length), Length.FromInches(width), thickness, shop ?? Shop);

    [Theory]
    [InlineData(Operation.FaceJoint)]
    [InlineData(Operation.EdgeJoint)]
    [InlineData(Operation.FacePlane)]
    [InlineData(Operation.FlattenPanel)]
    [InlineData(Operation.Rip)]
    public void A_foot_and_a_half_of_ordinary_stock_is_within_every_limit(Operation operation) =>
        Assert.IsType<StationRuling.Allowed>(Rule(operation, 18, 2, Length.FromInches(7, 8)));

    // Common practice, no source: nothing shorter than a foot over the jointer.
    [Fact]
    public void A_short_piece_is_refused_at_the_jointer_and_goes_to_the_hand_plane()
    {
        var ruling = Assert.IsType<StationRuling.Instead>(Rule(Operation.FaceJoint, 9, 2, Length.FromInches(7, 8)));

        Assert.Equal(Workaround.HandTool, ruling.Way);
        Assert.Equal(Length.FromInches(9), ruling.Found);
        Assert.Equal(Length.FromInches(12), ruling.Expected);
        Assert.Contains("jointer", ruling.Limit, StringComparison.Ordinal);
    }

    [Fact]
    public void A_short_panel_goes_through_the_planer_on_a_carrier_sled() =>
        Assert.Equal(Workaround.CarrierSled, Assert.IsType<StationRuling.Instead>(Rule(Operation.FlattenPanel, 9, 5, Length.FromInches(1, 2))).Way);

    [Fact]
    public void A_shop_without_hand_work_refuses_instead() =>
        Assert.IsType<StationRuling.Refused>(
            Rule(Operation.FaceJoint, 9, 2, Length.FromInches(7, 8), Shop with { WorksSmallPiecesByHand = false }));

    [Fact]
    public void A_panel_higher_than_the_bandsaw_is_refused_whatever_the_shop_does_by_hand() =>
        Assert.IsType<StationRuling.Refused>(Rule(Operation.Resaw, 18, 7, Length.FromInches(3, 8)));

    [Fact]
    public void Work_without_a_machine_has_no_limit() =>
        Assert.IsType<StationRuling.Allowed>(Rule(Operation.Sand, 1, 1, Length.FromInches(1, 8)));
}
