using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Ideas;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Plans.Ideas;

public sealed class IdeaVariantsTests
{
    [Fact]
    public void Every_design_comes_as_it_stands_first_and_then_in_other_sizes()
    {
        var variants = IdeaVariants.For(new PlanRequest());

        Assert.Equal(DesignCatalogue.BuiltIn.Select(d => d.Key), variants.Take(DesignCatalogue.BuiltIn.Length).Select(v => v.Design));
        Assert.All(variants.Take(DesignCatalogue.BuiltIn.Length), v => Assert.Equal((IdeaStep.AsItStands, true), (v.Step, v.Options.IsEmpty)));
        Assert.Equal(variants.Select(v => v.Step).Order(), variants.Select(v => v.Step));
        Assert.Equal(["3 in", "5 in", "6 in"], variants.Where(v => v is { Design: "striped-squares", Step: IdeaStep.OtherSize }).Select(v => v.Options["size"]));
        Assert.Equal(["2", "6"], variants.Where(v => v is { Design: "striped-squares", Step: IdeaStep.OtherNumber }).Select(v => v.Options["count"]));
        Assert.Contains(variants, v => v is { Design: "u-stand", Step: IdeaStep.OtherChoice } && v.Options["with-squares"] == "yes");
    }

    [Fact]
    public void Each_fits_the_shop_and_takes_other_wood_than_the_rest()
    {
        var request = new PlanRequest();
        var variants = IdeaVariants.For(request);

        var products = variants.Select(v => ((DesignOutcome.Derived)GiftDesigns.Derive([v.ToGift("x", 1)], [], request.Shop)[0].Outcome).Product).ToArray();

        Assert.Equal(variants.Select(v => v.Title), products.Select(p => p.Summary));
        var wood = variants.Zip(products, (v, p) => $"{v.Design} {string.Join(';', p.Parts.Where(x => x.Kind != PartKind.Rod).Select(x => (x.Key, x.Count, x.Length, x.Width, x.Thickness)))}").ToArray();
        Assert.Equal(wood.Distinct(), wood);
    }

    [Fact]
    public void A_design_of_the_makers_own_comes_in_sizes_of_its_own_and_within_its_limits()
    {
        var small = new Design
        {
            Key = "tiny",
            Title = "Tiny",
            Family = "striped-squares",
            Options = ImmutableSortedDictionary<string, string>.Empty.Add("size", "24 in").Add("count", "1"),
        };

        var variants = IdeaVariants.For(new PlanRequest { Designs = [small] }).Where(v => v.Design == "tiny").ToArray();

        // Larger than 24 in is more than the design takes, and half of one is none.
        Assert.Equal(["18 in"], variants.Where(v => v.Step == IdeaStep.OtherSize).Select(v => v.Options["size"]));
        Assert.DoesNotContain(variants, v => v.Step == IdeaStep.OtherNumber);
    }

    [Fact]
    public void A_shop_in_millimetres_gets_whole_centimetres()
    {
        var sizes = IdeaVariants.For(new PlanRequest { Shop = new Shop { Unit = LengthUnit.Millimetre } })
            .Where(v => v is { Design: "striped-squares", Step: IdeaStep.OtherSize }).Select(v => v.Options["size"]);

        Assert.Equal(["80 mm", "130 mm", "150 mm"], sizes);
    }
}
