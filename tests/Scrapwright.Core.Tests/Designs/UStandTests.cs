using CsCheck;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Shops;
using static Scrapwright.Core.Tests.Designs.Derivation;

namespace Scrapwright.Core.Tests.Designs;

public sealed class UStandTests
{
    private const string Family = "u-stand";

    private static readonly Gen<(string Key, string Value)[]> AnyOptions =
        from count in Gen.Int[1, 24]
        from size in Gen.Int[64 * 3, 64 * 12]
        from thickness in Gen.Int[8, 64]
        from clearance in Gen.Int[1, 32]
        from headRoom in Gen.Int[0, 200]
        from depth in Gen.Int[52, 110]
        from board in Gen.Int[26, 40]
        from setIn in Gen.Int[26, 60]
        from bar in Gen.Int[42, 90]
        from barInset in Gen.Int[26, 60]
        from keys in Gen.Int[0, 3]
        from unit in Gen.Int[250, 600]
        select ((string Key, string Value)[])
        [
            .. new (string Key, int Marks)[]
            {
                ("size", size), ("thickness", thickness), ("clearance", clearance), ("head-room", headRoom), ("depth", depth),
                ("board-thickness", board), ("set-in", setIn), ("bar-height", bar), ("bar-thickness", board), ("bar-inset", barInset),
            }.Select(o => (o.Key, Text(Length.FromMicrometres((long)unit * o.Marks)))),
            ("count", $"{count}"), ("keys", $"{keys}"),
        ];

    // By hand, defaults: four squares 4 × 4 × 3/8 in; boards 1 in × 3/8 in.
    [Fact]
    public void The_default_stand_comes_out_as_by_hand()
    {
        var fit = Length.FromMicrometres(100);

        var product = Make(Family);

        // Inside 4 + 2 × 1/16 = 4 1/8; base 4 1/8 + 2 × 3/8 = 4 7/8 in over its long side.
        var (board, bar) = (product.Part("base"), product.Part("bar"));
        Assert.Equal((In(4, 7, 8), In(1), In(0, 3, 8), 2, MitredEnds.Both), (board.Length, board.Width, board.Thickness, board.Count, board.Mitres));
        // Uprights: base 3/8 + stack 1 1/2 + rise 1/4 = 2 1/8 in.
        Assert.Equal((In(2, 1, 8), 2, MitredEnds.Right), (product.Part("left-upright").Length, product.Part("left-upright").Count, product.Part("left-upright").Mitres));
        Assert.Equal((In(2, 1, 8), 2, MitredEnds.Left), (product.Part("right-upright").Length, product.Part("right-upright").Count, product.Part("right-upright").Mitres));
        // Bars: as long as the stack is deep, 3/4 in high, 3/8 in thick.
        Assert.Equal((In(4), In(0, 3, 4), In(0, 3, 8), 2), (bar.Length, bar.Width, bar.Thickness, bar.Count));
        // Slots across a base: 3/8 + 1/2 = 7/8 in from each end, 3/8 in and the fit along, 3/16 in deep.
        var far = In(4, 7, 8) - In(0, 7, 8) - In(0, 3, 8) - fit;
        Assert.Equal(
            [(In(0, 7, 8), In(0, 3, 8) + fit, In(0, 3, 16)), (far, In(0, 3, 8) + fit, In(0, 3, 16))],
            board.Notches.Select(n => (n.FromEnd, n.Opening, n.Depth)));
        Assert.All(board.Notches, n => Assert.True(n is { AcrossFace: true, OnUpperEdge: false }));
        // Slots in a bar: 1/2 in from each end, 1 in and the fit along, 3/16 in deep, from above.
        Assert.Equal(
            [(In(0, 1, 2), In(1) + fit, In(0, 3, 16)), (In(2, 1, 2) - fit, In(1) + fit, In(0, 3, 16))],
            bar.Notches.Select(n => (n.FromEnd, n.Opening, n.Depth)));
        Assert.All(bar.Notches, n => Assert.True(n is { AcrossFace: false, OnUpperEdge: true }));
        // Outside: bars 3/4 high, flush with the bases on top, then 1 1/2 + 1/4.
        Assert.Equal((In(4, 7, 8), In(4), In(2, 1, 2)), product.Outside);
        Assert.Equal("stand of two U-shaped sides for 4 squares, 4 in", product.Summary);
    }

    [Fact]
    public void Each_side_is_cut_along_one_board_in_the_order_it_is_folded_up()
    {
        var product = Make(Family);

        Assert.Equal(["A: A1 A2 A3", "B: B1 B2 B3", "C: C1", "D: D1"], product.Runs.Select(r => $"{r.Mark}: {string.Join(' ', r.Members.Select(m => m.Mark))}"));
        Assert.Equal(["left-upright 1", "base 1", "right-upright 1"], product.Runs[0].Members.Select(m => $"{m.Part} {m.Copy}"));
        // 2 × 2 1/8 + 4 7/8 = 9 1/8; two kerfs of 1/8 and two ends of 1/4: 9 7/8 in.
        var shop = new Shop();
        Assert.Equal(
            In(9, 1, 8) + (shop.TableSaw.Kerf * 2) + (shop.Allowances.EndTrim.Mean * 2), new SolidNeeds(product.Runs[0], product.Parts, shop).Length);
    }

    [Fact]
    public void Keys_are_evenly_spaced_across_the_corner()
    {
        var product = Make(Family, ("keys", "3"));

        // 1 in in four gaps.
        Assert.Equal([In(0, 1, 4), In(0, 1, 2), In(0, 3, 4)], Enumerable.Range(1, 3).Select(i => product.Size($"middle of key {i} from the front edge")));
        Assert.DoesNotContain(Make(Family, ("keys", "0")).Joints, j => j.Kind.Contains("keys", StringComparison.Ordinal));
    }

    [Fact]
    public void Parts_are_sanded_before_the_laps_and_the_squares_after_the_fit()
    {
        var product = Make(Family, ("with-squares", "yes"), ("keys", "0"));

        Assert.Equal(
            [
                Operation.Sand, Operation.CutLaps, Operation.CutMitres, Operation.DryFit, Operation.TreatEdges, Operation.Sand,
                Operation.Assemble, Operation.Assemble, Operation.Finish,
            ],
            product.Assembly.Select(s => s.Operation));
        Assert.Equal(["square"], product.Assembly[5].Parts);
    }

    [Fact]
    public void Slots_pair_up() => AnyOptions.Sample(options =>
    {
        if (Derive(Family, new Shop(), options) is not DesignOutcome.Derived { Product: var product }) return;
        var (board, bar, fit) = (product.Part("base"), product.Part("bar"), product.Size("fit clearance"));

        Assert.All(board.Notches.Zip(bar.Notches), pair => Assert.Equal(board.Thickness, pair.First.Depth + pair.Second.Depth));
        Assert.All(board.Notches, n => Assert.Equal(bar.Thickness + fit, n.Opening));
        Assert.All(bar.Notches, n => Assert.Equal(board.Width + fit, n.Opening));
        Assert.All(bar.Notches, n => Assert.True(n.Depth < bar.Width));
        foreach (var part in (Part[])[board, bar])
        {
            var (first, second) = (part.Notches[0], part.Notches[1]);
            Assert.Equal(first.FromEnd, part.Length - second.FromEnd - second.Opening);
            Assert.True(second.FromEnd - first.FromEnd - first.Opening >= In(0, 1, 4));
            // A base is mitred: at the depth of its slot, that much of its end is gone.
            Assert.True(first.FromEnd - (part == board ? first.Depth : Length.Zero) >= In(0, 1, 4));
        }
    });

    [Fact]
    public void The_set_fits_between_the_uprights_and_they_stand_above_it() => AnyOptions.Sample(options =>
    {
        if (Derive(Family, new Shop(), options) is not DesignOutcome.Derived { Product: var product }) return;
        var (set, board) = (product.Set!, product.Part("base"));
        Length Of(string key) => LengthParser.ParseWithUnit(options.Single(o => o.Key == key).Value).Value;

        Assert.Equal(Of("clearance") * 2, product.Size("between the uprights") - set.Size);
        Assert.Equal(board.Length - (board.Thickness * 2), product.Size("between the uprights"));
        Assert.Equal(Of("head-room"), product.Part("left-upright").Length - board.Thickness - (set.Thickness * set.Count));
        Assert.Equal(product.Part("bar").Width - board.Thickness + product.Part("left-upright").Length, product.Outside.Up);
    });

    [Fact]
    public void Most_of_the_options_tried_fit()
    {
        var fits = 0;
        AnyOptions.Sample(options => { if (Derive(Family, new Shop(), options) is DesignOutcome.Derived) Interlocked.Increment(ref fits); }, iter: 200, seed: "0000KOIPe036");
        Assert.True(fits > 60, $"{fits} of 200");
    }

    [Theory]
    [InlineData("depth", "1 3/8")] // 4 − 2 × 1/2 − 2 × 1 3/8 = 1/4 in, less two fits
    [InlineData("set-in", "7/8")] // 4 − 2 × 7/8 − 2 × 1 = 1/4 in, less two fits
    [InlineData("bar-inset", "1 5/8")] // 4 1/8 − 2 × 1 5/8 − 2 × 3/8 = 1/8 in
    [InlineData("bar-height", "5/16")] // lower than the boards are thick
    [InlineData("keys", "4")] // 4 keys make 5 gaps of 1/5 in from middle to middle, less than two kerfs of 1/8 in
    [InlineData("fit", "1/16")]
    [InlineData("fit", "-0.1 mm")]
    [InlineData("board-thickness", "0")]
    [InlineData("square-species", "plastic")]
    public void A_wrong_option_is_refused(string key, string value) => Assert.Equal(key, Assert.Single(Refuse(Family, (key, value))).Option);

    [Fact]
    public void What_is_expected_does_fit()
    {
        var problem = Assert.Single(Refuse(Family, ("bar-inset", "1 5/8"), ("fit", "0 in")));

        // (4 1/8 − 2 × 3/8 − 1/4) / 2 = 1 9/16 in.
        Assert.StartsWith("at most 1 9/16 in", problem.Expected, StringComparison.Ordinal);
        Make(Family, ("bar-inset", "1 9/16"), ("fit", "0 in"));
    }

    // 1 1/2 in squares: sides of 1 in set in by 1/2 in ask for 2 × (1/2 + 1 + fit) + 1/4 = 3 1/4 in and the fits.
    [Fact]
    public void Squares_too_small_for_any_side_are_refused_with_the_size_that_would_do()
    {
        Assert.Contains(
            Refuse(Family, ("size", "1 1/2"), ("fit", "0 in")), p => p.Option == "size" && p.Expected.StartsWith("squares of at least 3 1/4 in", StringComparison.Ordinal));
        Make(Family, ("size", "3 1/4"), ("fit", "0 in"));
    }
}
