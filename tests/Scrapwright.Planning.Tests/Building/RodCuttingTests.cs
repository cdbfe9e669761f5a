using System.Collections.Immutable;
using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;
using Scrapwright.Planning.Building;

namespace Scrapwright.Planning.Tests.Building;

public sealed class RodCuttingTests
{
    private static readonly Length Diameter = Length.FromInches(3, 8);

    private static Shop Shop(int onHand) => new() { Rods = [new RodStock("paper-birch", Diameter, Length.FromInches(36), onHand)] };

    private static ImmutableArray<RodPiece> Pieces(params int[] eighths) =>
        [.. eighths.Select((e, i) => new RodPiece($"p{i}", Diameter, Length.FromInches(e, 8), []))];

    [Fact]
    public void Two_rods_do_where_first_fit_takes_three()
    {
        // In eighths, each piece with its kerf, a rod holds 289: first fit decreasing fills 130 + 100, then 95 + 94 + 80, and needs a third for 79; 130 + 80 + 79 and 100 + 95 + 94 do with two.
        var uses = RodCutting.Cut(Pieces(129, 99, 94, 93, 79, 78), Shop(0));

        Assert.Equal(2, uses.Length);
        Assert.All(uses, u => Assert.True(u.Bought));
    }

    [Fact]
    public void Rods_on_hand_come_first() =>
        Assert.Single(RodCutting.Cut(Pieces(100, 100, 100), Shop(1)), u => u.Bought);

    [Fact]
    public void A_piece_longer_than_any_rod_gets_a_rod_of_its_own()
    {
        var use = Assert.Single(RodCutting.Cut(Pieces(400), Shop(2)));

        Assert.True(use.Bought);
        Assert.Equal(Length.FromInches(51), use.Length);
    }

    [Fact]
    public void Every_piece_is_cut_once_and_fits() =>
        Gen.Int[8, 200].Array[1, 8].Sample(
            eighths =>
            {
                var pieces = Pieces(eighths);
                var uses = RodCutting.Cut(pieces, Shop(1));

                Assert.Equal(pieces.Select(p => p.Id).Order(), uses.SelectMany(u => u.Pieces).Order());
                Assert.All(uses, u =>
                {
                    var cut = u.Pieces.Select(id => pieces.Single(p => p.Id == id).Length).ToList();
                    Assert.True(Length.Sum(cut) + (Length.FromInches(1, 8) * (cut.Count - 1)) <= u.Length);
                });
            },
            iter: 20);
}
