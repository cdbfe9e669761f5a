using Bunit;
using Scrapwright.Client.Api;
using Scrapwright.Client.Ideas;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans.Ideas;

namespace Scrapwright.Client.Tests.Ideas;

public sealed class IdeasPageTests : ScreenContext
{
    private static readonly Offcut Walnut = new() { Label = "W1", Species = "black-walnut", Length = Length.FromInches(18), Width = Length.FromInches(2), Thickness = Length.FromInches(1) };

    private static readonly Proposal Two = new()
    {
        Title = "4 striped squares, 4 in",
        Gifts = [new Gift { Label = "squares1", Design = "striped-squares", Priority = 3 }, new Gift { Label = "squares2", Design = "striped-squares", Priority = 3 }],
        AtMost = 5,
        ClampLoads = 2,
    };

    [Fact]
    public void With_an_empty_pile_it_leads_to_the_pile()
    {
        var page = Render<IdeasPage>();

        page.WaitForAssertion(() => Assert.Equal("pile", page.Find("a").GetAttribute("href")));
    }

    [Fact]
    public void Proposals_are_ranked_cards_and_one_goes_on_the_list_with_labels_that_are_free()
    {
        Far.Gifts.Add(new GiftRow(100, new Gift { Label = "squares1", Design = "striped-squares" }));
        Far.Ideas = new IdeasAnswer { Question = new(IdeasKind.Gifts), Planned = ["squares1"], Proposals = [Two], NotTried = ["a stand"] };
        var page = Open();

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Equal("What the pile gives beside 1 gift on the list", page.Find("#ideas-title").TextContent));
        Assert.Equal(new IdeasQuestion(IdeasKind.Gifts), Far.Asked);
        Assert.Equal("2 found, at most 5 can be had.", page.Find(".idea-sure").TextContent);
        Assert.Contains("No time was left for 1 idea: a stand.", page.Markup);

        page.Find(".idea button").Click();

        page.WaitForAssertion(() => Assert.StartsWith("On the list: squares2, squares3.", page.Find(".idea-added").TextContent.Trim()));
        Assert.Equal(["squares1", "squares2", "squares3"], Far.Gifts.Select(g => g.Gift.Label));
        Assert.All(Far.Gifts.Skip(1), g => Assert.Equal(3, g.Gift.Priority));
        Assert.True(page.Find(".idea button").HasAttribute("disabled"));
        Assert.Contains("have changed since", page.Find(".notice.warning").TextContent);
    }

    [Fact]
    public void Asked_for_one_person_what_they_had_is_kept_back_and_one_gift_is_enough()
    {
        Far.Given.Add(new(7, new GivenGift { Recipient = "Ada", Design = "rod-stand", Date = new(2026, 6, 20) }));
        Far.Ideas = new IdeasAnswer { Question = new(IdeasKind.Gifts) { Recipient = "Ada", Had = ["rod-stand"] }, Proposals = [Two with { Gifts = [.. Two.Gifts.Select(g => g with { Recipient = "Ada" })] }] };
        var page = Open();

        page.WaitForElement("#idea-for").Change("Ada");
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Equal("What the pile gives for Ada", page.Find("#ideas-title").TextContent));
        Assert.Equal(("Ada", "rod-stand"), (Far.Asked!.Recipient, Assert.Single(Far.Asked.Had)));
        Assert.Contains("Not proposed, because Ada has had it: stand with rods.", page.Markup);
        page.Find(".idea button").Click();
        page.WaitForAssertion(() => Assert.Equal("Ada", Assert.Single(Far.Gifts).Gift.Recipient));
    }

    [Fact]
    public void Fewer_than_all_can_be_taken()
    {
        Far.Ideas = new IdeasAnswer { Question = new(IdeasKind.Gifts), Proposals = [Two] };
        var page = Open();
        page.Find("form").Submit();
        page.WaitForElement(".idea select").Change("1");

        page.Find(".idea button").Click();

        page.WaitForAssertion(() => Assert.Equal(["squares1"], Far.Gifts.Select(g => g.Gift.Label)));
    }

    [Fact]
    public void An_offcut_is_asked_about_by_its_label()
    {
        Far.Ideas = new IdeasAnswer
        {
            Question = new(IdeasKind.Offcut, "W1"),
            Uses = [.. Enumerable.Range(1, 4).Select(i => new OffcutUse { Gift = $"gift{i}", Title = "4 squares", Part = "square", Difference = new([], [], 0, 0, 0), New = i == 1 ? Two.Gifts[0] : null })],
        };
        var page = Open();
        page.Find("#idea-kind").Change(nameof(IdeasKind.Offcut));

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Equal("Where W1 serves best", page.Find("#ideas-title").TextContent));
        Assert.Equal((IdeasKind.Offcut, "W1", false), (Far.Asked!.Kind, Far.Asked.Offcut, Far.Asked.BesideGifts));
        Assert.Equal(3, page.FindAll(".ideas > li").Count);
        Assert.Equal("1 more use", page.Find("summary").TextContent);
        Assert.Single(page.FindAll(".idea button"));
    }

    [Fact]
    public void An_offcut_of_no_use_is_told_so()
    {
        Far.Ideas = new IdeasAnswer { Question = new(IdeasKind.Offcut, "W1") };
        var page = Open();

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.StartsWith("W1 is of no use for any gift or design.", page.Find(".notice").TextContent));
    }

    [Fact]
    public void Purchases_that_unlock_nothing_are_not_among_the_ideas()
    {
        Far.Ideas = new IdeasAnswer
        {
            Question = new(IdeasKind.Purchase),
            Unmade = ["pond"],
            Purchases = [new Purchase { Board = Walnut, Unlocks = ["pond"], Worth = 1, IsNeeded = true }, new Purchase { Clamps = new("bar clamp", Length.FromInches(24), 1) }],
        };
        var page = Open();

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Equal("A board of walnut, 18 in × 2 in × 1 in", page.Find(".idea h3").TextContent));
        Assert.Single(page.FindAll(".idea"));
        Assert.Contains("One more bar clamp, reach 24 in", page.Find("details").TextContent);
    }

    [Fact]
    public async Task A_question_is_ended_again_and_again_until_it_is_answered()
    {
        var page = Open();
        Far.Wait = new TaskCompletionSource();
        Far.Ideas = new IdeasAnswer { Question = new(IdeasKind.Gifts), NotTried = ["a stand"] };
        page.Find("form").Submit();

        page.WaitForElement("form button[type=button]").Click();
        for (var i = 0; i < 200 && Ends() < 2; i++) await Task.Delay(100, Xunit.TestContext.Current.CancellationToken);

        Assert.Equal(2, Ends());
        Far.Wait.SetResult();
        page.WaitForAssertion(() => Assert.Contains("No time was left for 1 idea: a stand.", page.Find(".doubt").TextContent));

        int Ends() => Far.Requests.ToArray().Count(r => r == $"POST {ApiRoutes.IdeasEnd}");
    }

    [Fact]
    public void Without_the_server_it_says_so()
    {
        var page = Open();
        Far.IsCutOff = true;

        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Contains("does not answer", page.Find(".problem-box").TextContent));
    }

    private IRenderedComponent<IdeasPage> Open()
    {
        Far.Offcuts.Add(new OffcutRow(1, Walnut, LengthUnit.Inch));
        var page = Render<IdeasPage>();
        page.WaitForElement("#find-ideas");
        return page;
    }
}
