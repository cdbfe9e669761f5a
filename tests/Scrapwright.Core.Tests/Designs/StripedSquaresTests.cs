using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;
using static Scrapwright.Core.Tests.Designs.Derivation;

namespace Scrapwright.Core.Tests.Designs;

public sealed class StripedSquaresTests
{
    private const string Family = "striped-squares";

    // The issue: a set of n striped squares, by default 4 in × 4 in × 3/8 in.
    [Fact]
    public void Without_options_it_is_four_squares_of_four_inches_and_three_eighths()
    {
        var product = Make(Family);

        var square = Assert.Single(product.Parts);
        Assert.Equal((In(4), In(4), In(0, 3, 8), 4), (square.Length, square.Width, square.Thickness, square.Count));
        Assert.Equal(PartKind.Panel, square.Kind);
        Assert.Equal("4 striped squares, 4 in", product.Summary);
        Assert.Equal(new StackedSet(4, In(4), In(0, 3, 8)), product.Set);
        Assert.Equal((In(4), In(4), In(1, 1, 2)), product.Outside); // 4 × 3/8 in = 1 1/2 in high
        Assert.Equal([Operation.TreatEdges, Operation.Sand, Operation.Finish], product.Assembly.Select(s => s.Operation));
    }

    [Fact]
    public void Every_option_is_read()
    {
        var product = Make(
            Family, ("count", "6"), ("size", "95 mm"), ("thickness", "8mm"), ("species", "walnut + Hard Maple+walnut"), ("pattern", "mirrored"),
            ("strips", "5"), ("edge", "Chamfer"), ("edge-size", "1/16"));

        var square = Assert.Single(product.Parts);
        Assert.Equal((6, Length.FromMillimetres(95), Length.FromMillimetres(8)), (square.Count, square.Width, square.Thickness));
        Assert.Equal(["black-walnut", "sugar-maple"], square.Wish!.Species);
        Assert.Equal((StripPattern.Mirrored, 5, 12), (square.Wish.Pattern, square.Wish.MinimumStrips, square.Wish.MaximumStrips));
        Assert.Equal((EdgeTreatment.Chamfer, In(0, 1, 16)), (square.Edge, square.EdgeSize));
    }

    [Fact]
    public void Wishes_for_hearts_panels_and_contrast_are_read_and_the_shop_stands_in_for_contrast()
    {
        var wish = Make(Family, ("pattern", "accent"), ("hearts", "alternating"), ("from-panels", "each"), ("least-contrast", "20")).Parts[0].Wish!;

        Assert.Equal((StripPattern.Accent, HeartSides.Alternating, SetPanels.Each), (wish.Pattern, wish.Hearts, wish.Panels));
        Assert.Equal(20, wish.ContrastIn(new Shop()));
        Assert.Equal(new Shop().MinimumContrast, Make(Family).Parts[0].Wish!.ContrastIn(new Shop()));
    }

    [Fact]
    public void Book_matched_strips_leave_heart_sides_as_they_come()
    {
        Assert.Equal(StripPattern.BookMatched, Make(Family, ("pattern", "book-matched")).Parts[0].Wish!.Pattern);

        var problem = Assert.Single(Refuse(Family, ("pattern", "book-matched"), ("hearts", "alike")));

        Assert.Equal(("hearts", "alike", DesignMessages.HeartsOfSisters), (problem.Option, problem.Found, problem.Expected));
    }

    [Theory]
    [InlineData("51")]
    [InlineData("-1")]
    [InlineData("much")]
    public void A_contrast_beyond_the_range_is_refused(string text) =>
        Assert.Contains("0 to 50", Assert.Single(Refuse(Family, ("least-contrast", text))).Expected);

    [Fact]
    public void A_bare_number_is_in_the_shops_unit() =>
        Assert.Equal(Length.FromMillimetres(100), Make(Family, new Shop { Unit = LengthUnit.Millimetre }, ("size", "100")).Parts[0].Length);

    [Fact]
    public void The_summary_speaks_the_shops_unit() =>
        Assert.Equal("1 striped square, 100 mm", Make(Family, new Shop { Unit = LengthUnit.Millimetre }, ("size", "100"), ("count", "1")).Summary);

    [Theory]
    [InlineData("eased", EdgeTreatment.Eased, 0, true)]
    [InlineData("square", EdgeTreatment.Square, 0, false)]
    [InlineData("round-over", EdgeTreatment.RoundOver, 8, true)]
    public void Edges_differ_and_square_ones_take_no_step(string edge, EdgeTreatment treatment, int sizeIn64ths, bool hasStep)
    {
        var product = Make(Family, ("edge", edge));

        Assert.Equal((treatment, Length.FromInches(sizeIn64ths, 64)), (product.Parts[0].Edge, product.Parts[0].EdgeSize));
        Assert.Equal(hasStep, product.Assembly.Any(s => s.Operation == Operation.TreatEdges));
    }

    [Theory]
    [InlineData("count", "0")]
    [InlineData("count", "25")]
    [InlineData("count", "-3")]
    [InlineData("count", "four")]
    [InlineData("count", "999999999999999999999")]
    [InlineData("size", "0")]
    [InlineData("size", "-4 in")]
    [InlineData("size", "40 m")]
    [InlineData("size", "")]
    [InlineData("size", "4 in\0")]
    [InlineData("thickness", "0 in")]
    [InlineData("thickness", "3")]
    [InlineData("species", "wallnut")]
    [InlineData("pattern", "zigzag")]
    [InlineData("strips", "13")]
    [InlineData("strips", "1")]
    [InlineData("strips", "9")] // 9 strips of at least 1/2 in are wider than 4 in
    [InlineData("edge", "ogee")]
    [InlineData("edge-size", "0")]
    public void A_wrong_option_is_named_with_what_was_found(string key, string value)
    {
        var problem = Assert.Single(Refuse(Family, (key, value)));

        Assert.Equal((key, value), (problem.Option, problem.Found));
        Assert.NotEmpty(problem.Expected);
    }

    [Fact]
    public void An_edge_wider_than_half_the_thickness_is_refused()
    {
        var problem = Assert.Single(Refuse(Family, ("edge", "round-over"), ("edge-size", "1/4"), ("thickness", "3/8")));

        Assert.Equal(DesignMessages.AtMost("3/16 in", "half the thickness"), problem.Expected);
    }

    [Fact]
    public void An_edge_size_that_the_edge_does_not_use_does_not_matter() =>
        Assert.Equal(Length.Zero, Make(Family, ("edge", "eased"), ("edge-size", "1/2")).Parts[0].EdgeSize);

    [Fact]
    public void A_misspelt_option_names_the_nearest() =>
        Assert.Equal(new DesignProblem("thicknes", "1/2", DesignMessages.KnownOption("thickness")), Assert.Single(Refuse(Family, ("thicknes", "1/2"))));

    [Fact]
    public void A_misspelt_species_is_suggested() =>
        Assert.Contains("Walnut", Assert.Single(Refuse(Family, ("species", "maple+wallnut"))).Expected, StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void All_wrong_options_are_found_at_once() =>
        Assert.Equal(["count", "pattern", "size"], Refuse(Family, ("size", "x"), ("count", "x"), ("pattern", "x")).Select(p => p.Option).Order());

    [Fact]
    public void A_huge_text_is_cut_short_and_survived() =>
        Assert.All(Refuse(Family, (new string('s', 1_000_000), "1"), ("size", new string('9', 1_000_000))), p => Assert.True(p.Found.Length + p.Option.Length < 200));
}
