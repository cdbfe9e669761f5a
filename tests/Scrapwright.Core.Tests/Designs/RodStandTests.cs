using CsCheck;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;
using static Scrapwright.Core.Tests.Designs.Derivation;

namespace Scrapwright.Core.Tests.Designs;

public sealed class RodStandTests
{
    private const string Family = "rod-stand";

    private static readonly Gen<(string Key, string Value)[]> AnyOptions =
        from count in Gen.Int[1, 24]
        from size in Gen.Int[64 * 2, 64 * 12]
        from thickness in Gen.Int[8, 64]
        from clearance in Gen.Int[1, 14]
        from headRoom in Gen.Int[24, 200]
        from plate in Gen.Int[24, 64]
        from rod in Gen.Int[8, 40]
        from inset in Gen.Int[28, 96]
        from stopped in Gen.Bool
        from unit in Gen.Int[250, 600] // a 64th is 396.875 µm; other grids too
        select Options64(unit, ("size", size), ("thickness", thickness), ("clearance", clearance), ("head-room", headRoom), ("plate-thickness", plate),
            ("rod-diameter", rod), ("rod-inset", inset), ("rod-depth", plate / 2)) is var lengths
            ? [.. lengths, ("count", $"{count}"), ("rods", stopped ? "stopped" : "through")]
            : lengths;

    private static (string Key, string Value)[] Options64(int unit, params (string Key, int Marks)[] options) =>
        [.. options.Select(o => (o.Key, Text(Length.FromMicrometres((long)unit * o.Marks))))];

    // By hand, defaults: four squares 4 × 4 × 3/8 in.
    [Fact]
    public void The_default_stand_comes_out_as_by_hand()
    {
        var product = Make(Family);

        // Plate: 4 + 2 × 1/16 clearance + 3/8 rod + 2 × 1/2 inset = 5 1/2 in. Common practice, no source: above 5 in for 4 in squares.
        var plate = product.Part("plate");
        Assert.Equal((In(5, 1, 2), In(5, 1, 2), In(0, 1, 2), 2), (plate.Length, plate.Width, plate.Thickness, plate.Count));
        // Holes: 1/2 in from the near edge; from the other 1/2 + 1/16 + 3/8 = 15/16 in. 5 1/2 − 1/2 = 5; 5 1/2 − 15/16 = 4 9/16.
        Assert.Equal(
            [(In(0, 1, 2), In(0, 15, 16)), (In(5), In(0, 15, 16)), (In(0, 15, 16), In(5)), (In(4, 9, 16), In(5))],
            plate.Holes.Select(h => (h.FromEnd, h.FromEdge)));
        Assert.All(plate.Holes, h => Assert.Equal((In(0, 3, 8), In(0, 1, 2), true), (h.Diameter, h.Depth, h.FromInside)));
        // Rods: stack 4 × 3/8 = 1 1/2, head room 1/2, both plates 1 in: 3 in.
        var rod = product.Part("rod");
        Assert.Equal((PartKind.Rod, In(3), In(0, 3, 8), In(0, 3, 8), 4), (rod.Kind, rod.Length, rod.Width, rod.Thickness, rod.Count));
        Assert.Equal((In(5, 1, 2), In(5, 1, 2), In(3)), product.Outside);
        Assert.Equal(In(4, 1, 8), product.Size("between the front rods"));
        Assert.Equal("stand of two plates and four rods for 4 squares, 4 in", product.Summary);
        Assert.DoesNotContain(product.Parts, p => p.Key == "square");
    }

    // Stopped 1/4 in deep: 1 1/2 + 1/2 + 2 × 1/4 = 2 1/2 in; outside 2 + 2 × 1/2 = 3 in all the same.
    [Fact]
    public void Stopped_rods_are_shorter_and_the_stand_is_as_high()
    {
        var product = Make(Family, ("rods", "stopped"));

        Assert.Equal(In(2, 1, 2), product.Part("rod").Length);
        Assert.Equal(In(3), product.Outside.Up);
        Assert.All(product.Part("plate").Holes, h => Assert.Equal(In(0, 1, 4), h.Depth));
        // Drilled before sanding: 1/4 + 1/128 in.
        Assert.Equal(In(0, 33, 128), Assert.Single(product.Assembly, s => s.Operation == Operation.Drill).Sizes[0]);
    }

    // The issue: dry-fit and size the stand on unsanded squares, rods from the inside face, inside faces sanded before glue-up.
    [Fact]
    public void The_order_of_work_is_fit_then_sand_then_glue()
    {
        var product = Make(Family, ("with-squares", "yes"));

        Assert.Equal(
            [Operation.CutRods, Operation.Drill, Operation.DryFit, Operation.TreatEdges, Operation.Sand, Operation.Assemble, Operation.Finish],
            product.Assembly.Select(s => s.Operation));
        // Unsanded: 1 1/2 in and 8 faces of 1/128 in = 1 9/16 in; of 2 in room 7/16 in stay.
        Assert.Equal([In(1, 9, 16), In(0, 7, 16)], product.Assembly[2].Sizes);
        Assert.Contains("inside face", product.Assembly[5].Text, StringComparison.Ordinal);
        Assert.Equal(4, product.Part("square").Count);
    }

    [Fact]
    public void Plates_that_fit_under_the_drill_together_are_drilled_together()
    {
        Assert.Contains("through both", Make(Family).Assembly[1].Text, StringComparison.Ordinal);
        Assert.Contains("each plate", Make(Family, ("plate-thickness", "1")).Assembly[1].Text, StringComparison.Ordinal); // 2 1/32 in > 2 in stroke
    }

    [Fact]
    public void A_missing_drill_bit_is_named()
    {
        Assert.Contains(Make(Family, ("rod-diameter", "7/16")).Cautions, c => c.Contains("no drill bit of 7/16 in", StringComparison.Ordinal));
        Assert.DoesNotContain(Make(Family).Cautions, c => c.Contains("drill bit", StringComparison.Ordinal));
    }

    [Fact]
    public void Holes_stay_inside_the_plate_with_wood_around_them_and_apart() => AnyOptions.Sample(options =>
    {
        if (Derive(Family, new Shop(), options) is not DesignOutcome.Derived { Product: var product }) return;
        var plate = product.Part("plate");
        foreach (var hole in plate.Holes)
        {
            Length[] edges = [hole.FromEnd, hole.FromEdge, plate.Length - hole.FromEnd, plate.Width - hole.FromEdge];
            Assert.All(edges, e => Assert.True((e * 2) - hole.Diameter >= In(0, 1, 4)));
            Assert.True(hole.Depth <= plate.Thickness);
        }

        foreach (var (a, b) in from a in plate.Holes from b in plate.Holes where a != b select (a, b))
            Assert.True(Distance(a.FromEnd, a.FromEdge, b.FromEnd, b.FromEdge) >= 2 * a.Diameter.Millimetres - 1e-6);
    });

    [Fact]
    public void The_stack_slides_in_from_the_front_and_cannot_leave_another_way() => AnyOptions.Sample(options =>
    {
        if (Derive(Family, new Shop(), options) is not DesignOutcome.Derived { Product: var product }) return;
        var plate = product.Part("plate");
        var (size, gap) = (product.Set!.Size, product.Size("gap to the rods, each side"));
        var start = (plate.Length - size).Divide(2, Rounding.Down); // the stack's left and front side
        var rods = plate.Holes.Select(h => (Left: (h.FromEnd * 2) - h.Diameter, Right: (h.FromEnd * 2) + h.Diameter, Front: (h.FromEdge * 2) - h.Diameter, Rear: (h.FromEdge * 2) + h.Diameter)).ToArray();
        var (left, right) = (start * 2, (start + size) * 2); // doubled, so that half a diameter is whole

        // The stack passes between the front rods with the gap on each side, and they stand beside it over their whole diameter.
        Assert.Equal(gap * 2, left - rods[0].Right);
        Assert.Equal(gap * 2, rods[1].Left - right);
        Assert.All(rods[..2], r => Assert.True(r.Front >= left && r.Rear <= right));
        // The rear rods stand the gap behind it, over their whole diameter.
        Assert.All(rods[2..], r => Assert.Equal(gap * 2, r.Front - right));
        Assert.All(rods[2..], r => Assert.True(r.Left >= left && r.Right <= right));
    });

    // A square, however turned, is at least its side wide, so it cannot pass a gap that is narrower.
    [Fact]
    public void Only_the_front_lets_a_square_through() => AnyOptions.Sample(options =>
    {
        if (Derive(Family, new Shop(), options) is not DesignOutcome.Derived { Product: var product }) return;
        var (h, size) = (product.Part("plate").Holes, product.Set!.Size.Millimetres);
        double Gap(Hole a, Hole b) => Distance(a.FromEnd, a.FromEdge, b.FromEnd, b.FromEdge) - a.Diameter.Millimetres;

        Assert.True(Gap(h[0], h[1]) > size); // front
        Assert.True(Gap(h[2], h[3]) < size); // rear
        Assert.True(Gap(h[0], h[2]) < size && Gap(h[1], h[3]) < size); // sides
    });

    [Theory]
    [InlineData("4 in", "1/16 in", "3/8 in")]
    [InlineData("2 in", "1/8 in", "1/4 in")]
    [InlineData("5 in", "7/32 in", "1/4 in")]
    public void Pushed_and_turned_in_every_way_the_stack_leaves_by_the_front_only(string size, string clearance, string rod)
    {
        var stand = Make(Family, ("size", size), ("clearance", clearance), ("rod-diameter", rod), ("strips", "2"));
        var (plate, side) = (stand.Part("plate"), stand.Set!.Size.Millimetres);
        var withoutRear = plate with { Holes = plate.Holes[..2] };

        var reached = StackEscape.Reached(plate, side).ToArray();

        Assert.Contains(reached, pose => pose.Y < -0.5 * side); // more than half out at the front
        Assert.All(reached, pose => Assert.True(pose.Y < 0.4 * side)); // never half out at the rear
        Assert.All(reached, pose => Assert.True(Math.Abs(pose.X) < 0.4 * side)); // nor at a side
        Assert.Contains(StackEscape.Reached(withoutRear, side), pose => pose.Y > 0.6 * side); // without the rear rods it would
    }

    [Fact]
    public void A_rod_is_as_long_as_stack_head_room_and_both_holes() => AnyOptions.Sample(options =>
    {
        if (Derive(Family, new Shop(), options) is not DesignOutcome.Derived { Product: var product }) return;
        var (plate, rod, set) = (product.Part("plate"), product.Part("rod"), product.Set!);
        var headRoom = LengthParser.ParseWithUnit(options.Single(o => o.Key == "head-room").Value).Value;

        Assert.Equal((set.Thickness * set.Count) + headRoom + (plate.Holes[0].Depth * 2), rod.Length);
        Assert.Equal((set.Thickness * set.Count) + headRoom + (plate.Thickness * 2), product.Outside.Up);
    });

    [Fact]
    public void Most_of_the_options_tried_fit()
    {
        var fits = 0;
        AnyOptions.Sample(options => { if (Derive(Family, new Shop(), options) is DesignOutcome.Derived) Interlocked.Increment(ref fits); }, iter: 200, seed: "0000KOIPe036");
        Assert.True(fits > 60, $"{fits} of 200");
    }

    // Both plates are one part, drilled from the inside face: the upper one lies turned over left to right, and its holes must meet the lower one's.
    [Fact]
    public void The_holes_are_the_same_when_the_plate_is_turned_over()
    {
        var plate = Make(Family, ("size", "3.7 in"), ("rod-inset", "13 mm")).Part("plate");

        Assert.Equal(plate.Holes.ToHashSet(), plate.Holes.Select(h => h with { FromEnd = plate.Length - h.FromEnd }).ToHashSet());
    }

    [Theory]
    [InlineData("rod-inset", "1/4")] // 1/4 − 3/16 leaves 1/16 in of wood
    [InlineData("rod-diameter", "7/8")] // wall: needs an inset of 9/16
    [InlineData("head-room", "1/32")] // 8 faces × 1/128 in = 1/16 in more before sanding
    [InlineData("clearance", "0")]
    [InlineData("clearance", "21/64")] // 4 × 3/8 / (4 + 3/4) = 0.3158 in at most
    [InlineData("plate-thickness", "0")]
    [InlineData("rods", "glued")]
    [InlineData("with-squares", "perhaps")]
    [InlineData("holds", "nobody")]
    public void A_wrong_option_is_refused(string key, string value) => Assert.Contains(Refuse(Family, (key, value)), p => p.Option == key || key == "rod-diameter" && p.Option == "rod-inset");

    [Fact]
    public void Rods_thicker_than_a_third_of_the_square_collide() =>
        Assert.Contains(Refuse(Family, ("size", "1 in"), ("rod-diameter", "3/8"), ("strips", "2")), p => p.Option == "rod-diameter");

    [Fact]
    public void A_stopped_hole_must_not_come_through()
    {
        var problem = Assert.Single(Refuse(Family, ("rods", "stopped"), ("rod-depth", "7/16")));

        Assert.Equal(("rod-depth", DesignMessages.AtMost("3/8 in", "a stopped hole must not come through")), (problem.Option, problem.Expected));
        Assert.Equal(In(0, 1, 2), Make(Family, ("rod-depth", "7/16")).Part("plate").Holes[0].Depth); // through holes do not mind
    }

    private static double Distance(Length x1, Length y1, Length x2, Length y2) => Math.Sqrt(Math.Pow((x1 - x2).Millimetres, 2) + Math.Pow((y1 - y2).Millimetres, 2));
}
