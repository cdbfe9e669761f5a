using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Files.Tests;

public sealed class ExampleWorkshopTests
{
    [Fact]
    public void Request_has_a_pile_of_45_entries_in_nine_species_without_doubts()
    {
        var pile = ExampleWorkshop.Request.Pile;

        Assert.Equal(45, pile.Length);
        Assert.InRange(pile.Sum(offcut => offcut.Count), 50, 60);
        Assert.Equal(9, pile.Select(offcut => offcut.Species).Distinct().Count());
        Assert.All(pile, offcut => Assert.Empty(OffcutDoubts.Of(offcut, LengthUnit.Inch)));
        Assert.All(pile, offcut =>
        {
            Assert.InRange(offcut.Length.Inches, 8, 30);
            Assert.InRange(offcut.Width.Inches, 7 / 8.0, 4.5);
            Assert.InRange(offcut.Thickness.Inches, 5 / 8.0, 1.25);
        });
    }

    [Fact]
    public void Request_has_nine_gifts_of_three_families_that_can_all_be_derived()
    {
        var request = ExampleWorkshop.Request;

        Assert.Equal(9, request.Gifts.Length);
        Assert.Equal(DesignCatalogue.Families.Select(f => f.Key).Order(), request.Gifts.Select(g => g.Design).Distinct().Order());
        Assert.Equal([1, 2, 3], request.Gifts.Select(g => g.Priority).Distinct().Order());
        Assert.All(GiftDesigns.Derive(request.Gifts, request.Designs, request.Shop), derived =>
            Assert.True(derived.Outcome is DesignOutcome.Derived, $"{derived.Gift.Label}: {derived.Outcome}"));
    }

    [Fact]
    public void The_wood_stands_in_a_shed_and_some_gifts_will_live_where_it_is_heated()
    {
        var request = ExampleWorkshop.Request;

        Assert.Equal("shed-temperate", request.Shop.Climate);
        Assert.Empty(ShopRules.Check(request.Shop));
        Assert.All(request.Gifts, gift => Assert.Empty(GiftRules.Check(gift, request.Shop)));
        Assert.Single(request.Gifts, gift => gift.Finish.Length > 0 && gift.Finish != request.Shop.Finish);
        Assert.InRange(request.Gifts.Count(gift => gift.Climate == "heated-temperate"), 2, 8);
    }
}
