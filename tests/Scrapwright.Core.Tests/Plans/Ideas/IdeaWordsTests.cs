using System.Text.Json;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Ideas;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Plans.Ideas;

public sealed class IdeaWordsTests
{
    private static readonly Shop Shop = new();
    private static readonly Offcut Board = new() { Label = "W1", Species = "black-walnut", Length = Length.FromInches(36), Width = Length.FromInches(6), Thickness = Length.FromInches(1) };

    [Theory]
    [InlineData(2, "2, the most there can be")]
    [InlineData(5, "2 found, at most 5 can be had")]
    [InlineData(null, "2 found, there may be more")]
    public void A_number_says_how_sure_it_is(int? atMost, string expected) => Assert.Equal(expected, IdeaWords.Number(Two with { AtMost = atMost }));

    [Fact]
    public void A_proposal_says_what_it_takes()
    {
        // 16,387.064 mm³ are a cubic inch by definition of the inch.
        var proposal = Two with { WoodUsed = 163_871, InGifts = Volume.Of(Length.FromInches(1), Length.FromInches(2), Length.FromInches(2)), ClampLoads = 1, UsedUp = ["W1", "M2"] };

        Assert.Equal("10.0 in³ of wood, 4.0 in³ of it in the gifts; 1 clamp load.", IdeaWords.Takes(proposal, Shop));
        Assert.Equal("164 cm³ of wood, 66 cm³ of it in the gifts; 1 clamp load.", IdeaWords.Takes(proposal, Shop with { Unit = LengthUnit.Millimetre }));
        Assert.EndsWith("; 2 clamp loads fewer than now.", IdeaWords.Takes(proposal with { ClampLoads = -2 }, Shop));
        Assert.Equal("2 offcuts used up: W1, M2.", IdeaWords.UsedUp(proposal));
    }

    [Fact]
    public void A_use_says_what_it_changes()
    {
        var use = new OffcutUse { Gift = "pond", Title = "4 squares", Part = "square", Difference = new(["pond"], [], -1, 16_388, 2), ShareInGiftsPerMille = 259, IsProven = true };

        Assert.Equal("pond: strips of the square", IdeaWords.Name(use));
        Assert.Equal("Against leaving it alone: pond can only be made with it, 1 point of looks less, 1.0 in³ of wood more, 2 clamp loads more. 25 % of it ends in gifts.", IdeaWords.Say(use, Shop));
        Assert.StartsWith("As good as leaving it alone.", IdeaWords.Say(use with { Difference = new([], [], 0, 0, 0) }, Shop));

        // Less than is shown is no difference.
        Assert.StartsWith("As good as leaving it alone.", IdeaWords.Say(use with { Difference = new([], [], 0, -700, 0) }, Shop));
    }

    [Fact]
    public void A_purchase_is_named_and_says_what_it_makes_possible()
    {
        Assert.Equal("a board of walnut, 36 in × 6 in × 1 in", IdeaWords.NameOf(new Purchase { Board = Board }, Shop));
        Assert.Equal("two more bar clamps, reach 24 in", IdeaWords.NameOf(new Purchase { Clamps = new("bar clamp", Length.FromInches(24), 2) }, Shop));
        Assert.Equal("Nothing more can be made with it.", IdeaWords.Say(new Purchase { Board = Board }));
        Assert.Equal("Makes 2 gifts possible: a, b. With more time the plan might do without it.", IdeaWords.Say(new Purchase { Board = Board, Unlocks = ["a", "b"] }));
    }

    [Fact]
    public void Ranks_keep_to_their_rule()
    {
        var large = Two with { Title = "large", InGifts = Volume.FromCubicPicometres(9), ClampLoads = 3 };
        var thrifty = large with { Title = "thrifty", ClampLoads = 2 };
        Assert.Equal(["thrifty", "large", "two"], IdeaRanks.Ranked([Two, large, thrifty]).Select(p => p.Title));

        var plain = new OffcutUse { Gift = "plain", Title = "", Part = "", Difference = new([], [], 0, -9, 0), ShareInGiftsPerMille = 1 };
        var fuller = plain with { Gift = "fuller", ShareInGiftsPerMille = 2 };
        var nicer = plain with { Gift = "nicer", Difference = new([], [], 1, 9, 9) };
        var needed = plain with { Gift = "needed", Difference = new(["needed"], [], -5, 9, 9) };
        Assert.Equal(["needed", "nicer", "fuller", "plain"], IdeaRanks.Ranked([plain, fuller, nicer, needed]).Select(u => u.Gift));

        var clamp = new Purchase { Clamps = new("c", Length.FromInches(24), 1), Worth = 2, Unlocks = ["a"] };
        var board = new Purchase { Board = Board, Worth = 2, Unlocks = ["a"] };
        var best = new Purchase { Board = Board with { Width = Length.FromInches(8) }, Worth = 3, Unlocks = ["a"] };
        Assert.Equal([best, clamp, board], IdeaRanks.Ranked([board, clamp, best]));
    }

    [Fact]
    public void What_was_not_tried_is_named()
    {
        var answer = new IdeasAnswer { Question = new(IdeasKind.Gifts), NotTried = ["4 squares, 4 in", "stand"] };

        Assert.Equal("No time was left for 2 ideas: 4 squares, 4 in; stand. Ask again with more time.", IdeaWords.NotTried(answer));
        Assert.Equal("", IdeaWords.Nothing(answer, Shop));
        Assert.Equal("", IdeaWords.NotTried(answer with { NotTried = [] }));
        Assert.Equal("This pile gives none of the designs.", IdeaWords.Nothing(answer with { NotTried = [] }, Shop));
    }

    [Fact]
    public void Questions_and_answers_go_through_JSON_as_they_are()
    {
        var answer = new IdeasAnswer
        {
            Question = new(IdeasKind.Offcut, "W1", BesideGifts: false, Seconds: 7.5),
            Planned = ["a"],
            Proposals = [Two with { AtMost = 3, InGifts = Volume.FromCubicPicometres(7), UsedUp = ["W1"] }],
            Uses = [new OffcutUse { Gift = "b", Title = "t", Part = "p", New = Two.Gifts[0], Difference = new(["b"], ["c"], 1, -2, 3) }],
            Reasons = [new Reason.OutOfTime()],
            Purchases = [new Purchase { Board = Board, Unlocks = ["b"], Worth = 4, IsNeeded = true }],
            NotTried = ["x"],
        };

        var text = JsonSerializer.Serialize(answer, PlanJson.Options);

        Assert.Equal(text, JsonSerializer.Serialize(JsonSerializer.Deserialize<IdeasAnswer>(text, PlanJson.Options), PlanJson.Options));
        Assert.Equal(answer.Question, JsonSerializer.Deserialize<IdeasAnswer>(text, PlanJson.Options)!.Question);
    }

    [Theory]
    [InlineData(IdeasKind.Offcut, "W1", 5, null)]
    [InlineData(IdeasKind.Gifts, "", 5, null)]
    [InlineData(IdeasKind.Offcut, "X", 5, "Found offcut 'X', expected one of the pile: W1.")]
    [InlineData(IdeasKind.Gifts, "", 0, "Found 0 seconds, expected a number above 0 and at most 600.")]
    public void A_question_that_cannot_be_asked_says_what_can(IdeasKind kind, string offcut, double seconds, string? expected)
    {
        Assert.Equal(expected, IdeasFault.Of(new PlanRequest { Pile = [Board] }, new IdeasQuestion(kind, offcut, Seconds: seconds)));
        Assert.Equal("Found an empty pile, expected at least one offcut.", IdeasFault.Of(new PlanRequest(), new IdeasQuestion(IdeasKind.Gifts)));
    }

    private static Proposal Two => new() { Title = "two", Gifts = [new Gift { Label = "a", Design = "striped-squares" }, new Gift { Label = "b", Design = "striped-squares" }] };
}
