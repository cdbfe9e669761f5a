using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Ideas;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Tests.Ideas;

public sealed class IdeaMakerTests
{
    private static readonly IdeasQuestion Gifts = new(IdeasKind.Gifts, Seconds: 1);

    [Fact]
    public async Task Every_proposal_has_an_audited_plan_that_makes_all_of_it()
    {
        var told = new Told();

        var answer = await AskAsync(Requests.FourSquares with { Gifts = [] }, Gifts, told);

        Assert.NotEmpty(answer.Proposals);
        Assert.Equal(answer.Proposals.Order(Comparer<Proposal>.Create((one, other) => one.InGifts.CompareTo(other.InGifts))).Reverse().Select(p => p.InGifts), answer.Proposals.Select(p => p.InGifts));
        foreach (var proposal in answer.Proposals)
        {
            var plan = told.All.Single(t => t.Proposal is { } p && p.Title == proposal.Title).Plan!;
            Assert.Empty(PlanAudit.Check(plan));
            Assert.All(proposal.Gifts, g => Assert.Contains(g.Label, plan.Made.Select(m => m.Gift)));
            Assert.Equal(proposal.WoodUsed, Requests.Level(plan, LevelKind.WoodUsed).Value);
            Assert.Equal(proposal.InGifts, Volume.Sum(plan.Ledger.Select(r => r.Parts)));
        }
    }

    [Fact]
    public async Task What_is_proposed_can_be_planned_again_from_the_list()
    {
        var workshop = Requests.FourSquares with { Gifts = [] };
        var proposal = (await AskAsync(workshop, Gifts)).Proposals[0];

        var plan = await Requests.PlanOf(workshop with { Gifts = proposal.Gifts });

        Assert.Empty(plan.Unmade);
    }

    [Fact]
    public async Task Beside_a_list_the_gifts_on_it_stay_made()
    {
        var workshop = Requests.TwoGifts;
        var told = new Told();

        var answer = await AskAsync(workshop, Gifts, told);

        Assert.Equal(["bench", "stand"], answer.Planned);
        Assert.NotEmpty(answer.Proposals);
        Assert.All(told.All.Where(t => t.Plan is not null), t => Assert.Superset(new HashSet<string>(answer.Planned), t.Plan!.Made.Select(m => m.Gift).ToHashSet()));
        Assert.All(answer.Proposals.SelectMany(p => p.Gifts), g => Assert.DoesNotContain(g.Label, workshop.Gifts.Select(w => w.Label)));
        Assert.All(answer.Proposals.SelectMany(p => p.Gifts), g => Assert.True(g.Priority > workshop.Gifts.Max(w => w.Priority)));

        // The whole pile gives at least as much as what the list leaves.
        var whole = await AskAsync(workshop, Gifts with { BesideGifts = false });
        foreach (var proposal in answer.Proposals.Where(p => !p.IsMixture))
        {
            var other = whole.Proposals.Single(p => p.Title == proposal.Title);
            Assert.True(other.AtMost is null || other.AtMost >= proposal.Count);
        }
    }

    [Fact]
    public async Task What_no_wood_here_can_make_is_said_to_be_impossible()
    {
        var workshop = new PlanRequest { Pile = [Requests.Offcut("W1", "black-walnut", 6 * 16, 20, 14)] };

        var answer = await AskAsync(workshop, Gifts);

        Assert.Empty(answer.Proposals);
        Assert.Empty(answer.NotTried);
        Assert.Equal(IdeaVariants.For(workshop).Select(v => v.Title).Order(), answer.Impossible.Order());
        Assert.Equal("This pile gives none of the designs.", IdeaWords.Nothing(answer, workshop.Shop));
    }

    [Fact]
    public async Task What_was_not_tried_is_said()
    {
        var answer = await IdeaMaker.AnswerAsync(Requests.FourSquares, null, Gifts, Requests.Quick, null, new CancellationToken(canceled: true));

        Assert.Empty(answer.Proposals);
        Assert.Superset(IdeaVariants.For(Requests.FourSquares).Select(v => v.Title).ToHashSet(), answer.NotTried.ToHashSet());
    }

    [Fact]
    public async Task An_offcut_that_a_gift_needs_serves_it_best()
    {
        var workshop = Requests.FourSquares with { Pile = [.. Requests.FourSquares.Pile.Where(o => o.Label is "W1" or "M1" or "W2")] };

        var answer = await AskAsync(workshop, new IdeasQuestion(IdeasKind.Offcut, "M1", Seconds: 4));

        var best = answer.Uses[0];
        Assert.Equal(("bench", "square"), (best.Gift, best.Part));
        Assert.True(best.IsProven);
        Assert.Equal(["bench"], best.Difference.Gained);
        Assert.Contains("bench can only be made with it", IdeaWords.Say(best, workshop.Shop));
    }

    [Fact]
    public async Task What_an_offcut_changes_is_what_planning_with_and_without_it_changes()
    {
        var workshop = Requests.FourSquares;
        var plan = await Requests.PlanOf(workshop);
        var offcut = plan.GlueUps[0].Strips[0].Offcut;

        var answer = await IdeaMaker.AnswerAsync(workshop, plan, new IdeasQuestion(IdeasKind.Offcut, offcut, Seconds: 4), Requests.Quick, null, TestContext.Current.CancellationToken);

        var use = answer.Uses.Single(u => u is { Gift: "bench", New: null });
        var without = await Requests.PlanOf(workshop with { Pile = [.. workshop.Pile.Where(o => o.Label != offcut)] });
        Assert.True(use.IsProven);
        Assert.Equal(Requests.Level(plan, LevelKind.WoodUsed).Value - Requests.Level(without, LevelKind.WoodUsed).Value, use.Difference.Wood);
        Assert.Equal(Requests.Level(plan, LevelKind.ClampLoads).Value - Requests.Level(without, LevelKind.ClampLoads).Value, use.Difference.ClampLoads);
    }

    [Fact]
    public async Task An_offcut_that_a_plan_has_in_a_part_already_serves_it_no_worse_than_there()
    {
        var plan = await Requests.PlanOf(Requests.TwoGifts);
        var strip = plan.GlueUps[0].Strips[0];

        var answer = await IdeaMaker.AnswerAsync(Requests.TwoGifts, plan, new IdeasQuestion(IdeasKind.Offcut, strip.Offcut, Seconds: 0.5), Requests.Quick, null, TestContext.Current.CancellationToken);

        var use = answer.Uses.Single(u => u.New is null && u.Gift == plan.GlueUps[0].Gift && !u.IsSolid);
        var without = await Requests.PlanOf(Requests.TwoGifts with { Pile = [.. Requests.TwoGifts.Pile.Where(o => o.Label != strip.Offcut)] });
        Assert.True(use.Difference.Gained.Length - use.Difference.Lost.Length >= plan.Made.Length - without.Made.Length);
        Assert.True(use.Difference.Looks >= Requests.Level(plan, LevelKind.Looks).Value - Requests.Level(without, LevelKind.Looks).Bound);
    }

    [Fact]
    public async Task A_board_serves_as_solid_parts_too()
    {
        var answer = await AskAsync(Requests.TwoGifts, new IdeasQuestion(IdeasKind.Offcut, "C1", Seconds: 0.5));

        Assert.Contains(answer.Uses, u => u is { Gift: "stand", IsSolid: true, New: null });
    }

    [Fact]
    public async Task An_offcut_of_no_use_is_told_so()
    {
        var workshop = Requests.FourSquares with { Pile = Requests.FourSquares.Pile.Add(Requests.Offcut("S1", "black-cherry", 30, 14, 5)) };

        var answer = await AskAsync(workshop, new IdeasQuestion(IdeasKind.Offcut, "S1", Seconds: 2));

        Assert.Empty(answer.Uses);
        Assert.Empty(answer.NotTried);
        Assert.Contains(answer.Reasons, r => r is Reason.Pinned { Offcut: "S1" });
        Assert.StartsWith("S1 is of no use for any gift or design. It is too short: 1 7/8 in", IdeaWords.Nothing(answer, workshop.Shop));
    }

    [Fact]
    public async Task An_offcut_that_is_kept_for_later_can_be_asked_about()
    {
        var workshop = Requests.FourSquares with { Choices = new() { Saved = ["W1"] } };

        var answer = await AskAsync(workshop, new IdeasQuestion(IdeasKind.Offcut, "W1", Seconds: 2));

        Assert.Contains(answer.Uses, u => u is { Gift: "bench", New: null });
    }

    [Fact]
    public async Task A_purchase_that_unlocks_a_gift_is_found_and_one_that_does_not_is_not_claimed()
    {
        // All of one wood: stripes need another.
        var workshop = Requests.FourSquares with { Pile = [.. Requests.FourSquares.Pile.Where(o => o.Species == "black-walnut")], Gifts = [Requests.Squares("bench", ("species", "walnut+hard maple"))] };

        var answer = await AskAsync(workshop, new IdeasQuestion(IdeasKind.Purchase, Seconds: 2));

        Assert.Equal(["bench"], answer.Unmade);
        var maple = answer.Purchases.Single(p => p.Board?.Species == "sugar-maple");
        Assert.Equal(["bench"], maple.Unlocks);
        Assert.True(maple.IsNeeded);
        Assert.Same(maple, answer.Purchases[0]);
        Assert.All(answer.Purchases.Where(p => p.Board?.Species != "sugar-maple"), p => Assert.Empty(p.Unlocks));
        await Requests.PlanOf(workshop with { Pile = workshop.Pile.Add(maple.Board!) });
        Assert.StartsWith("Makes 1 gift possible: bench.", IdeaWords.Say(maple));
    }

    [Fact]
    public async Task One_more_clamp_is_found_where_a_clamp_is_missing()
    {
        // Every glue-up of a strip that is long enough for a blank takes three clamps.
        var rack = ImmutableArray.Create(new ClampKind("bar clamp", Length.FromInches(24), 2));
        var workshop = Requests.FourSquares with { Shop = Requests.FourSquares.Shop with { Clamps = rack }, Gifts = [Requests.Squares("one", ("count", "1"))] };

        var answer = await AskAsync(workshop, new IdeasQuestion(IdeasKind.Purchase, Seconds: 2));

        Assert.Equal(["one"], answer.Unmade);
        Assert.Equal(["one"], answer.Purchases.Single(p => p.Clamps is { Count: 1 }).Unlocks);
        Assert.NotNull(answer.Purchases[0].Clamps);
        Assert.All(answer.Purchases.Where(p => p.Board is not null), p => Assert.Empty(p.Unlocks));
    }

    [Fact]
    public async Task With_everything_made_nothing_has_to_be_bought()
    {
        var answer = await AskAsync(Requests.FourSquares, new IdeasQuestion(IdeasKind.Purchase, Seconds: 2));

        Assert.Empty(answer.Unmade);
        Assert.Empty(answer.Purchases);
        Assert.StartsWith("Everything that is wanted is made", IdeaWords.Nothing(answer, Requests.FourSquares.Shop));
    }

    [Fact]
    public async Task A_question_about_what_is_not_there_says_what_is()
    {
        var error = await Assert.ThrowsAsync<ArgumentException>(() => AskAsync(Requests.FourSquares, new IdeasQuestion(IdeasKind.Offcut, "X9")));

        Assert.StartsWith("Found offcut 'X9', expected one of the pile: W1, M1", error.Message);
    }

    private static Task<IdeasAnswer> AskAsync(PlanRequest workshop, IdeasQuestion question, IProgress<IdeasProgress>? progress = null) =>
        IdeaMaker.AnswerAsync(workshop, null, question, Requests.Quick, progress, TestContext.Current.CancellationToken);

    private sealed class Told : IProgress<IdeasProgress>
    {
        internal List<IdeasProgress> All { get; } = [];

        public void Report(IdeasProgress value) => All.Add(value);
    }
}
