using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Core.Tests.Gifts;

public sealed class HadBeforeTests
{
    private static ImmutableSortedDictionary<string, string> Options(params IEnumerable<(string Key, string Value)> options) =>
        options.ToImmutableSortedDictionary(o => o.Key, o => o.Value);

    private static GivenGift Given(string recipient, string design, int year, params IEnumerable<(string Key, string Value)> options) =>
        new() { Recipient = recipient, Design = design, Date = new(year, 6, 20), Occasion = "Open day", Options = Options(options) };

    private static Gift Gift(string recipient, string design, params IEnumerable<(string Key, string Value)> options) =>
        new() { Label = "new", Recipient = recipient, Design = design, Options = Options(options) };

    private static HadBefore? Find(Gift gift, params ImmutableArray<GivenGift> given) => HadBefore.Of([gift], new GiftYears([], given), []).SingleOrDefault();

    [Fact]
    public void A_design_that_somebody_had_is_told()
    {
        var had = Find(Gift("Gate Keeper ", "striped-squares"), Given("gate keeper", "Striped-squares", 2025), Given("pond helper", "striped-squares", 2026));

        Assert.Equal((2025, Likeness.SameDesign), (had?.Former.Date.Year, had?.Likeness));
    }

    [Fact]
    public void Another_design_or_another_person_is_no_doubt()
    {
        Assert.Null(Find(Gift("gate keeper", "rod-stand"), Given("gate keeper", "striped-squares", 2025)));
        Assert.Null(Find(Gift("gate keeper", "rod-stand"), Given("gate keepers", "rod-stand", 2025)));
        Assert.Null(Find(Gift(" ", "rod-stand"), Given("x", "rod-stand", 2025)));
    }

    [Theory]
    [InlineData("walnut+ash", "ash + Walnut", "4", Likeness.Same)]
    [InlineData("walnut+ash", "walnut+ash", "6", Likeness.SameWoods)]
    [InlineData("walnut+ash", "walnut+cherry", "4", Likeness.SameDesign)]
    [InlineData("", "", "4", Likeness.SameDesign)] // open wishes: the woods it was made of are not known
    public void How_much_alike_goes_by_woods_and_options(string now, string then, string count, Likeness likeness) =>
        Assert.Equal(likeness, Find(Gift("a", "striped-squares", ("species", now)), Given("a", "striped-squares", 2025, ("species", then), ("count", count)))?.Likeness);

    [Fact]
    public void The_most_alike_is_told_and_of_equals_the_latest()
    {
        var (alike, other) = (("species", "walnut+ash"), ("species", "cherry+ash"));

        Assert.Equal(2024, Find(Gift("a", "striped-squares", alike), Given("a", "striped-squares", 2023, alike), Given("a", "striped-squares", 2024, alike), Given("a", "striped-squares", 2026, other))?.Former.Date.Year);
    }

    [Fact]
    public void Something_else_is_what_they_neither_had_nor_get()
    {
        ImmutableArray<Gift> gifts = [Gift("a", "striped-squares") with { Label = "one" }, Gift("a", "rod-stand") with { Label = "two" }];
        var years = new GiftYears([], [Given("a", "striped-squares", 2025)]);

        var had = Assert.Single(HadBefore.Of(gifts, years, []));

        Assert.Equal(["u-stand"], had.Else.Select(design => design.Key));
        Assert.Equal("Something else: stand with u-shaped sides.", had.ElseWords());
        Assert.Equal("a has had the same design (striped squares) on 20 June 2025, Open day.", had.Words(DesignCatalogue.BuiltIn));
    }

    [Fact]
    public void A_design_that_is_no_longer_there_is_compared_by_its_options()
    {
        Assert.Equal(Likeness.Same, Find(Gift("a", "old-box", ("lid", "yes")), Given("a", "old-box", 2025, ("lid", "yes")))?.Likeness);
        Assert.Equal(Likeness.SameDesign, Find(Gift("a", "old-box", ("lid", "yes")), Given("a", "old-box", 2025))?.Likeness);
    }
}
