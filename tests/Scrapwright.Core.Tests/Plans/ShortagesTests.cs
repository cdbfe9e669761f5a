using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Plans;

public sealed class ShortagesTests
{
    private static readonly Part Square = new()
    {
        Key = "square",
        Title = "square",
        Kind = PartKind.Panel,
        Length = Length.FromInches(4),
        Width = Length.FromInches(4),
        Thickness = Length.FromInches(3, 8),
        Count = 2,
        Wish = new PanelWish(StripPattern.Contrast, [], 2, 6),
    };

    private static readonly Part Rail = new()
    {
        Key = "rail",
        Title = "rail",
        Kind = PartKind.Solid,
        Length = Length.FromInches(6),
        Width = Length.FromInches(2),
        Thickness = Length.FromInches(1, 2),
        Count = 1,
    };

    [Fact]
    public void With_only_dark_wood_light_strips_are_missing()
    {
        var reason = Assert.IsType<Reason.MissingStrips>(Assert.Single(For(Panel(), Wood("W1", "black-walnut"), Wood("W2", "black-walnut"))));

        Assert.Equal(Tone.Light, reason.Tone);
        Assert.InRange(reason.Strips, 1, 3);
    }

    [Fact]
    public void With_only_light_wood_dark_strips_are_missing() =>
        Assert.Equal(Tone.Dark, Assert.IsType<Reason.MissingStrips>(Assert.Single(For(Panel(), Wood("M1", "sugar-maple")))).Tone);

    [Fact]
    public void Without_any_wood_any_will_do() =>
        Assert.Equal(Tone.Any, Assert.IsType<Reason.MissingStrips>(Assert.Single(For(Panel()))).Tone);

    [Fact]
    public void What_is_told_is_enough_when_it_is_bought()
    {
        ImmutableArray<Offcut> pile = [Wood("W1", "black-walnut"), Wood("W2", "black-walnut")];
        var reason = Assert.IsType<Reason.MissingStrips>(Assert.Single(For(Panel(), [.. pile])));
        var bought = Enumerable.Range(1, reason.Strips).Select(i => new Offcut
        {
            Label = $"N{i}",
            Species = "sugar-maple",
            Length = reason.Length,
            Width = reason.Width,
            Thickness = reason.Thickness,
        });

        Assert.IsType<Reason.OutOfTime>(Assert.Single(For(Panel(), [.. pile, .. bought])));
    }

    [Fact]
    public void A_little_less_than_what_is_told_is_not_enough()
    {
        var reason = Assert.IsType<Reason.MissingBoard>(Assert.Single(For(Solid())));
        var mark = ReadableSize.Mark(LengthUnit.Inch);
        var board = new Offcut { Label = "B", Species = "black-cherry", Length = reason.Length, Width = reason.Width, Thickness = reason.Thickness };

        Assert.IsType<Reason.OutOfTime>(Assert.Single(For(Solid(), board)));
        Assert.IsType<Reason.MissingBoard>(Assert.Single(For(Solid(), board with { Length = board.Length - mark })));
        Assert.IsType<Reason.MissingBoard>(Assert.Single(For(Solid(), board with { Width = board.Width - mark })));
        Assert.IsType<Reason.MissingBoard>(Assert.Single(For(Solid(), board with { Thickness = board.Thickness - mark })));
    }

    [Fact]
    public void Warp_and_defects_of_a_leftover_count()
    {
        var board = Wood("B", "black-cherry");

        Assert.IsType<Reason.OutOfTime>(Assert.Single(For(Solid(), board)));
        Assert.IsType<Reason.MissingBoard>(Assert.Single(For(Solid(), board with { Twist = Length.FromInches(3, 2) })));
        Assert.IsType<Reason.MissingBoard>(Assert.Single(For(Solid(), board with
        {
            Defects = [new Defect(DefectKind.Knot, Length.FromInches(5), Length.FromInches(6)), new Defect(DefectKind.Knot, Length.FromInches(11), Length.FromInches(13))],
        })));
    }

    [Fact]
    public void Refused_options_are_told()
    {
        var refused = new GiftDesign(Panel().Gift, new DesignOutcome.Refused([new DesignProblem("size", "0 in", "1 in or more")]));

        Assert.Equal([new Reason.WrongOption("size", "0 in", "1 in or more")], For(refused));
    }

    [Fact]
    public void A_panel_wider_than_the_clamps_reach_is_beyond_the_shop()
    {
        var shop = new Shop { Clamps = [new ClampKind("short", Length.FromInches(3), 8)] };
        var reason = Assert.IsType<Reason.BeyondShop>(Assert.Single(Shortages.For(Panel(), [], new PlanRequest { Shop = shop })));

        Assert.Equal(("square", Length.FromInches(3)), (reason.Part, reason.Allowed));
    }

    [Theory]
    [InlineData(1, Tone.Light, "one more strip of light wood ≥ 1 1/4 in wide, ≥ 13 in long, ≥ 7/8 in thick (square)")]
    [InlineData(2, Tone.Any, "two more strips of any wood ≥ 1 1/4 in wide, ≥ 13 in long, ≥ 7/8 in thick (square)")]
    public void Reasons_read_as_a_maker_says_them(int strips, Tone tone, string text) =>
        Assert.Equal(text, ReasonText.Write(
            new Reason.MissingStrips("square", strips, tone, Length.FromInches(5, 4), Length.FromInches(13), Length.FromInches(7, 8)),
            LengthStyle.Inches));

    [Fact]
    public void Least_sizes_are_rounded_up_to_the_mark() =>
        Assert.StartsWith("a board ≥ 2 1/4 in wide", ReasonText.Write(
            new Reason.MissingBoard("A", Length.FromInches(67, 32), Length.FromInches(8), Length.FromInches(1)),
            LengthStyle.Inches with { Denominator = 4 }), StringComparison.Ordinal);

    [Fact]
    public void A_part_is_called_by_its_title_and_sizes_are_not_torn_apart() =>
        Assert.Equal("Square: reach of the clamps is 12\u00a0in, needed 12\u00a01/32\u00a0in", ReasonText.Write(
            new Reason.BeyondShop("square", "reach of the clamps", Length.FromInches(12) + Length.FromInches(1, 64), Length.FromInches(12)),
            LengthStyle.Inches with { Denominator = 32 },
            _ => "Square",
            '\u00a0'));

    [Fact]
    public void A_limit_from_below_is_rounded_away_from_what_is_needed() =>
        Assert.EndsWith("is 1/2 in, needed 15/32 in", ReasonText.Write(
            new Reason.BeyondShop("square", "narrowest strip", Length.FromInches(31, 64), Length.FromInches(1, 2)),
            LengthStyle.Inches with { Denominator = 32 }), StringComparison.Ordinal);

    private static ImmutableArray<Reason> For(GiftDesign gift, params Offcut[] pile) => Shortages.For(
        gift,
        [.. pile.Select(o => new Leftover(new Piece(o.Label, o.Length, o.Width, o.Thickness, [new Lane(o.Label, o.Width)]), LeftoverPlace.Pile))],
        new PlanRequest { Pile = [.. pile] });

    private static Offcut Wood(string label, string species) => new()
    {
        Label = label,
        Species = species,
        Length = Length.FromInches(14),
        Width = Length.FromInches(3),
        Thickness = Length.FromInches(7, 8),
    };

    private static GiftDesign Panel() => Of(new Product { Family = "f", Summary = "s", Parts = [Square], Outside = default });

    private static GiftDesign Solid() => Of(new Product
    {
        Family = "f",
        Summary = "s",
        Parts = [Rail],
        Runs = [new GrainRun("A", [new PartRef("rail", 1, "A1")])],
        Outside = default,
    });

    private static GiftDesign Of(Product product) => new(new Gift { Label = "g", Design = "d" }, new DesignOutcome.Derived(product));
}
