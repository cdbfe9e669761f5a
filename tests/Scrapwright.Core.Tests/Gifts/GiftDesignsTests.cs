using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Designs;
using static Scrapwright.Core.Tests.Designs.Derivation;

namespace Scrapwright.Core.Tests.Gifts;

public sealed class GiftDesignsTests
{
    [Fact]
    public void A_stand_takes_its_size_from_the_gift_it_holds()
    {
        // Six squares of 3 1/2 × 1/4 in: stack 1 1/2 in; plate 3 1/2 + 1/8 + 3/8 + 1 = 5 in; rods 1 1/2 + 1/2 + 1 = 3 in.
        var outcomes = Derive(
            Gift("Ada", "rod-stand", ("holds", "Ben")), Gift("Ben", "striped-squares", ("count", "6"), ("size", "3 1/2"), ("thickness", "1/4")));

        var stand = Product(outcomes[0]);
        Assert.Equal(In(5), stand.Part("plate").Length);
        Assert.Equal(In(3), stand.Part("rod").Length);
        Assert.Equal(Product(outcomes[1]).Set, stand.Set);
        Assert.DoesNotContain(stand.Parts, p => p.Key == "square");
    }

    [Fact]
    public void A_stand_may_hold_the_squares_that_another_stand_came_with() =>
        Assert.Equal(7, Product(Derive(Gift("a", "u-stand", ("holds", "B")), Gift("b", "rod-stand", ("with-squares", "yes"), ("count", "7")))[0]).Set!.Count);

    [Fact]
    public void The_gift_overrides_the_design_and_the_design_the_family()
    {
        var design = new Design { Key = "thin", Title = "Thin", Family = "striped-squares", Options = Options(("thickness", "1/4"), ("Count", "6")) };

        var product = Product(Assert.Single(GiftDesigns.Derive([Gift("a", "Thin", ("count", "2"))], [design], new Shop())));

        Assert.Equal((2, In(4), In(0, 1, 4)), (product.Parts[0].Count, product.Parts[0].Length, product.Parts[0].Thickness));
    }

    [Fact]
    public void A_design_from_a_file_stands_in_for_the_built_in_one()
    {
        var design = new Design { Key = "striped-squares", Title = "Ours", Family = "striped-squares", Options = Options(("count", "9")) };

        Assert.Equal(9, Product(GiftDesigns.Derive([Gift("a", "striped-squares")], [design], new Shop())[0]).Parts[0].Count);
    }

    [Fact]
    public void An_unknown_design_names_the_nearest() =>
        Assert.Equal(new DesignProblem("design", "rodstand", DesignMessages.KnownDesign("rod-stand")), Problem(Derive(Gift("a", "rodstand"))[0]));

    [Fact]
    public void A_design_of_an_unknown_family_names_the_nearest()
    {
        var design = new Design { Key = "x", Title = "X", Family = "ustand" };

        Assert.Equal(DesignMessages.KnownFamily("u-stand"), Problem(GiftDesigns.Derive([Gift("a", "x")], [design], new Shop())[0]).Expected);
    }

    [Fact]
    public void An_unknown_gift_names_the_nearest() => Assert.Equal(
        DesignMessages.KnownGift("Benno"), Problem(Derive(Gift("Ada", "u-stand", ("holds", "Beno")), Gift("Benno", "striped-squares"))[0]).Expected);

    [Fact]
    public void A_ring_of_gifts_that_hold_each_other_is_refused_for_each()
    {
        var outcomes = Derive(Gift("a", "u-stand", ("holds", "b")), Gift("b", "rod-stand", ("holds", "a")), Gift("c", "u-stand", ("holds", "c")));

        Assert.Equal(DesignMessages.NoRing(["a", "b", "a"]), Problem(outcomes[0]).Expected);
        Assert.Equal(DesignMessages.NoRing(["b", "a", "b"]), Problem(outcomes[1]).Expected);
        Assert.Equal(DesignMessages.NoRing(["c", "c"]), Problem(outcomes[2]).Expected);
    }

    [Fact]
    public void A_long_chain_of_stands_is_refused_and_not_followed()
    {
        ImmutableArray<Gift> gifts = [.. Enumerable.Range(0, 200).Select(i => Gift($"g{i}", "u-stand", ("holds", $"g{i + 1}"))), Gift("g200", "striped-squares")];

        var outcomes = GiftDesigns.Derive(gifts, [], new Shop());

        Assert.Equal(DesignMessages.GiftWithSquares, Problem(outcomes[0]).Expected);
        Assert.IsType<DesignOutcome.Derived>(outcomes[199].Outcome);
    }

    [Fact]
    public void A_stand_without_squares_cannot_be_held() =>
        Assert.Equal(("holds", DesignMessages.GiftWithSquares), ProblemOf(Derive(Gift("a", "u-stand", ("holds", "b")), Gift("b", "rod-stand"))[0]));

    [Fact]
    public void A_gift_whose_options_do_not_fit_cannot_be_held()
    {
        var outcomes = Derive(Gift("a", "u-stand", ("holds", "b")), Gift("b", "striped-squares", ("count", "0")));

        Assert.Equal(DesignMessages.HeldGiftFits("b"), Problem(outcomes[0]).Expected);
        Assert.Equal("count", Problem(outcomes[1]).Option);
    }

    [Fact]
    public void A_stand_that_holds_does_not_contradict_the_set()
    {
        var set = Gift("b", "striped-squares", ("count", "6"));

        Assert.IsType<DesignOutcome.Derived>(Derive(Gift("a", "u-stand", ("holds", "b"), ("count", "6")), set)[0].Outcome);
        Assert.Equal(("count", DesignMessages.AsTheHeldSet("6")), ProblemOf(Derive(Gift("a", "u-stand", ("holds", "b"), ("count", "5")), set)[0]));
        Assert.Equal(("with-squares", DesignMessages.NoOwnSquares), ProblemOf(Derive(Gift("a", "u-stand", ("holds", "b"), ("with-squares", "yes")), set)[0]));
    }

    [Fact]
    public void Squares_hold_nothing() =>
        Assert.Equal("holds", Problem(Derive(Gift("a", "striped-squares", ("holds", "b")), Gift("b", "striped-squares"))[0]).Option);

    private static Gift Gift(string label, string design, params (string Key, string Value)[] options) =>
        new() { Label = label, Design = design, Options = Options(options) };

    private static ImmutableArray<GiftDesign> Derive(params Gift[] gifts) => GiftDesigns.Derive([.. gifts], [], new Shop());

    private static Product Product(GiftDesign design) => Assert.IsType<DesignOutcome.Derived>(design.Outcome).Product;

    private static DesignProblem Problem(GiftDesign design) => Assert.Single(Assert.IsType<DesignOutcome.Refused>(design.Outcome).Problems);

    private static (string Option, string Expected) ProblemOf(GiftDesign design) => (Problem(design).Option, Problem(design).Expected);
}
