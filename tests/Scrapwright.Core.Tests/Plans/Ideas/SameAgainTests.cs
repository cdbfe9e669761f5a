using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Ideas;

namespace Scrapwright.Core.Tests.Plans.Ideas;

public sealed class SameAgainTests
{
    private static readonly Occasion OpenDay = new() { Name = "Open day", Date = new(2027, 6, 19), Repeats = new Repetition.OnWeekday(6, 3, DayOfWeek.Saturday) };

    private static readonly PlanRequest Workshop = new() { Pile = [Offcut("black-walnut"), Offcut("sugar-maple"), Offcut("black-cherry")] };

    private static Offcut Offcut(string species) => new()
    {
        Label = $"X{species.Length}",
        Species = species,
        Length = Length.FromInches(20),
        Width = Length.FromInches(2),
        Thickness = Length.FromInches(1),
    };

    private static GivenGift Given(string recipient, string design, int year, string woods = "", string circle = "helpers") => new()
    {
        Recipient = recipient,
        Circle = circle,
        Design = design,
        Date = new(year, 6, 20),
        Occasion = "open day",
        Options = woods.Length == 0 ? Empty : Empty.Add("species", woods),
    };

    private static ImmutableSortedDictionary<string, string> Empty => ImmutableSortedDictionary<string, string>.Empty;

    private static ImmutableArray<AgainProposal> For(PlanRequest workshop, params ImmutableArray<GivenGift> given) =>
        SameAgain.For(workshop, new GiftYears([OpenDay], given), OpenDay);

    [Fact]
    public void Everybody_of_last_time_gets_one_proposal_and_nobody_of_the_time_before()
    {
        var proposals = For(Workshop, Given("a", "rod-stand", 2025), Given("b", "rod-stand", 2026), Given("c", "rod-stand", 2026), Given("B ", "u-stand", 2026));

        Assert.Equal(["b", "c"], proposals.Select(p => p.Recipient));
        Assert.Equal(["rod-stand", "u-stand"], proposals[0].LastTime.Select(g => g.Design));
    }

    [Fact]
    public void A_design_they_never_had_comes_first()
    {
        var choices = Assert.Single(For(Workshop, Given("a", "rod-stand", 2025), Given("a", "u-stand", 2026))).Choices;

        Assert.Equal(("striped-squares", true), (choices[0].Gift.Design, choices[0].IsNewDesign));
        Assert.Equal(("a", "helpers", "Open day"), (choices[0].Gift.Recipient, choices[0].Gift.Circle, choices[0].Gift.Occasion));
        Assert.All(choices.Skip(1), choice => Assert.False(choice.IsNewDesign));
    }

    [Fact]
    public void Nothing_is_proposed_that_they_had_in_the_same_woods()
    {
        ImmutableArray<GivenGift> given =
            [Given("a", "rod-stand", 2024, "hard maple + walnut"), Given("a", "u-stand", 2025, "cherry+walnut"), Given("a", "striped-squares", 2026, "walnut+maple"), Given("a", "striped-squares", 2023, "walnut+cherry")];

        var choices = Assert.Single(For(Workshop, given)).Choices;

        Assert.NotEmpty(choices);
        Assert.DoesNotContain(
            HadBefore.Of([.. choices.Select((choice, i) => choice.Gift with { Label = $"{i}" })], new GiftYears([], given), []), had => had.Likeness != Likeness.SameDesign);

        // They had the stand with rods longest ago.
        Assert.Equal(["rod-stand", "u-stand", "striped-squares"], choices.Select(choice => choice.Gift.Design).Distinct());
    }

    [Fact]
    public void Two_of_one_circle_get_different_things_where_that_can_be()
    {
        var proposals = For(Workshop, Given("a", "rod-stand", 2026), Given("b", "rod-stand", 2026));

        Assert.Equal(2, proposals.Select(p => p.Choices[0].Gift.Design).Distinct().Count());
    }

    [Fact]
    public void Who_is_on_the_list_for_it_already_is_told()
    {
        var listed = Workshop with { Gifts = [new Gift { Label = "have", Design = "u-stand", Recipient = "A", Occasion = "Open day" }, new Gift { Label = "other", Design = "u-stand", Recipient = "a" }] };

        Assert.Equal(["have"], Assert.Single(For(listed, Given("a", "rod-stand", 2026))).OnList);
    }

    [Fact]
    public void Who_has_had_everything_is_left_with_no_choice()
    {
        var poor = new PlanRequest { Pile = [Offcut("black-walnut")] };

        Assert.Empty(Assert.Single(For(poor, Given("a", "rod-stand", 2024), Given("a", "u-stand", 2025), Given("a", "striped-squares", 2026))).Choices);
    }

    [Fact]
    public void Every_choice_can_be_made_of_its_design_and_its_label_is_free()
    {
        var listed = Workshop with { Gifts = [new Gift { Label = "stand1", Design = "u-stand" }] };

        var proposals = For(listed, Given("a", "rod-stand", 2026), Given("b", "striped-squares", 2026), Given("c", "u-stand", 2026));

        foreach (var choice in proposals.SelectMany(p => p.Choices))
            Assert.IsType<DesignOutcome.Derived>(GiftDesigns.Derive([choice.Gift], [], listed.Shop)[0].Outcome);
        var labels = proposals.Select(p => Assert.Single(p.Choices.Select(c => c.Gift.Label).Distinct())).Append("stand1").ToArray();
        Assert.Equal(labels.Distinct(StringComparer.OrdinalIgnoreCase), labels);
    }

    [Fact]
    public void Without_a_last_time_there_is_nothing_to_propose() => Assert.Empty(For(Workshop));
}
