using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Milling;

/// <summary>Boards glued face to face, worked out by hand with the default shop: a jointed face takes 1/32 in with a spread of 1/128 in.</summary>
public sealed class FaceGluingTests
{
    private static readonly Offcut Upper = Cut("A3", 24, 96, 3, 8);
    private static readonly Offcut Lower = Cut("B7", 20, 80, 7, 16);

    [Fact]
    public void A_board_has_what_both_share_and_is_as_thick_as_both_with_a_flat_face()
    {
        var gluing = new FaceGluing(Upper, Lower, new Shop());

        // 3/8 − 1/32 and 7/16 − 1/32.
        Assert.Equal((Length.FromInches(11, 32), Length.FromInches(13, 32)), (gluing.UpperThickness, gluing.LowerThickness));
        var board = gluing.Board;
        Assert.Equal(("A3+B7", "black-walnut"), (board.Label, board.Species));
        Assert.Equal((Length.FromInches(20), Length.FromInches(5), Length.FromInches(3, 4)), (board.Length, board.Width, board.Thickness));
        Assert.Equal((Faces.Rough, 1), (board.Faces, board.Count));
        Assert.Equal(Length.FromInches(13, 16), gluing.RoughThickness);
        Assert.True(gluing.IsAllowed);
    }

    [Fact]
    public void Two_jointed_faces_spread_as_squares()
    {
        // √2 × 1/128 in = 0.280633003… mm, rounded up to a picometre.
        Assert.Equal(280_633_004L, new FaceGluing(Upper, Lower, new Shop()).Spread.Picometres);
        Assert.Equal(Length.FromInches(1, 128), new FaceGluing(Upper, Lower with { Faces = Faces.BothSurfaced }, new Shop()).Spread);
    }

    [Fact]
    public void Warp_costs_each_its_whole_hollow_once_and_the_board_is_flat()
    {
        // A cup of 1/16 in over the full width, and a twist of 1/32 in.
        var gluing = new FaceGluing(Upper with { Cup = Length.FromInches(1, 16) }, Lower with { Twist = Length.FromInches(1, 32) }, new Shop());

        Assert.Equal((Length.FromInches(9, 32), Length.FromInches(12, 32)), (gluing.UpperThickness, gluing.LowerThickness));
        Assert.False(StripMilling.IsWarped(gluing.Board));
        Assert.Equal(Length.FromInches(21, 32), gluing.Board.Thickness);
    }

    [Fact]
    public void Surfaced_flat_faces_take_no_jointing_and_two_of_them_leave_the_board_surfaced()
    {
        var one = Upper with { Faces = Faces.BothSurfaced };

        Assert.Equal((Length.FromInches(13, 16), Faces.BothSurfaced), (Board(one, Lower with { Faces = Faces.BothSurfaced }).Thickness, Board(one, Lower with { Faces = Faces.BothSurfaced }).Faces));
        Assert.Equal(Faces.Rough, Board(one, Lower with { Faces = Faces.OneSurfaced }).Faces);
        Assert.Equal(Faces.Rough, Board(one with { Bow = Length.FromInches(1, 64) }, one with { Label = "C" }).Faces);
    }

    [Fact]
    public void Defects_of_both_count_where_there_is_board()
    {
        var knot = new Defect(DefectKind.Knot, Length.FromInches(19), Length.FromInches(22));
        var beyond = new Defect(DefectKind.Check, Length.FromInches(20), Length.FromInches(24));
        var edge = new Defect(DefectKind.Sapwood, Length.Zero, Length.FromInches(20)) { Across = new(Length.FromInches(5), Length.FromInches(6)) };
        var kept = new Defect(DefectKind.Knot, Length.FromInches(2), Length.FromInches(3)) { IsKept = true };

        Assert.Equal([knot with { To = Length.FromInches(20) }, kept], Board(Upper with { Defects = [knot, beyond, edge] }, Lower with { Defects = [kept] }).Defects);
    }

    [Fact]
    public void Rings_are_known_when_both_stand_alike()
    {
        var quarter = Upper with { Rings = RingOrientation.Quarter };

        Assert.Equal(RingOrientation.Quarter, Board(quarter, Lower with { Rings = RingOrientation.Quarter }).Rings);
        Assert.Equal(RingOrientation.Unknown, Board(quarter, Lower).Rings);
    }

    [Fact]
    public void Another_wood_or_the_same_offcut_or_a_thickness_that_is_gone_is_refused()
    {
        Assert.False(new FaceGluing(Upper, Lower with { Species = "sugar-maple" }, new Shop()).IsAllowed);
        Assert.False(new FaceGluing(Upper, Upper, new Shop()).IsAllowed);
        Assert.False(new FaceGluing(Upper, Lower with { Thickness = Length.FromInches(1, 32) }, new Shop()).IsAllowed);
        Assert.False(new FaceGluing(Upper with { Length = Length.FromInches(6) }, Lower, new Shop { WorksSmallPiecesByHand = false }).IsAllowed);
        Assert.True(new FaceGluing(Upper with { Length = Length.FromInches(6) }, Lower, new Shop()).IsAllowed);
    }

    [Theory]
    [InlineData(20, 5, 10)] // 20 in at 6 in apart: one at each end and three between; wider than 3 in, so two rows.
    [InlineData(20, 3, 5)]
    [InlineData(6, 2, 2)]
    public void Clamps_stand_along_one_edge_or_both(int length, int width, int clamps) =>
        Assert.Equal(clamps, new FaceGluing(Upper with { Length = Length.FromInches(length), Width = Length.FromInches(width) }, Lower, new Shop()).ClampsNeeded);

    [Fact]
    public void Too_few_clamps_refuse_it() =>
        Assert.False(new FaceGluing(Upper, Lower, new Shop { Clamps = [new ClampKind("bar clamp", Length.FromInches(24), 9)] }).IsAllowed);

    [Fact]
    public void A_label_finds_its_board_again()
    {
        var pile = new[] { Upper, Lower }.ToDictionary(o => o.Label);

        Assert.Equal("A3+B7", FaceGluing.Find("A3+B7", pile, new Shop())?.Label);
        Assert.Null(FaceGluing.Find("A3", pile, new Shop()));
        Assert.Null(FaceGluing.Find("A3+Z9", pile, new Shop()));
    }

    private static Offcut Board(Offcut upper, Offcut lower) => new FaceGluing(upper, lower, new Shop()).Board;

    private static Offcut Cut(string label, int lengthInches, int widthSixteenths, int thickness, int parts) => new()
    {
        Label = label,
        Species = "black-walnut",
        Length = Length.FromInches(lengthInches),
        Width = Length.FromInches(widthSixteenths, 16),
        Thickness = Length.FromInches(thickness, parts),
    };
}
