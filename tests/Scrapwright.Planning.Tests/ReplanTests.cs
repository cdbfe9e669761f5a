using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning.Tests;

public sealed class ReplanTests
{
    [Fact]
    public async Task Planning_again_without_a_change_gives_the_same_plan()
    {
        var former = await Requests.PlanOf(Requests.FourSquares);

        var again = Again(former.Request, former);

        Assert.Empty(PlanChanges.Between(former, again));
        Assert.Equal(Bare(former), Bare(again));
        Assert.Equal(former.GlueUps.Sum(g => (long)g.Strips.Length), Requests.Level(again, LevelKind.StripsAsBefore).Value);
        Assert.True(Requests.Level(again, LevelKind.StripsAsBefore).IsProven);
    }

    [Fact]
    public async Task Two_gifts_planned_again_changes_nothing_that_is_no_better()
    {
        var former = await Requests.PlanOf(Requests.TwoGifts);

        var again = Again(former.Request, former);

        var (before, now) = (Values(former), Values(again));
        Assert.True(before.SequenceEqual(now) ? PlanChanges.Between(former, again).IsEmpty : IsBetter(now, before));
    }

    [Fact]
    public async Task After_one_changed_size_few_strips_change()
    {
        var former = await Requests.PlanOf(Requests.TwoGifts);
        var offcut = former.GlueUps[^1].Strips[0].Offcut;

        // Thicker than hoped: everything still fits, and nothing else is better for it.
        var request = Changed(former.Request, offcut, o => o with { Thickness = o.Thickness + Length.FromInches(1, 64) });
        var again = Again(request, former);

        var strips = former.GlueUps.Sum(g => g.Strips.Length) + former.Boards.Length;
        Assert.Empty(PlanAudit.Check(again));
        Assert.InRange(Requests.Level(again, LevelKind.StripsAsBefore).Value, strips * 2 / 3, strips);
    }

    [Fact]
    public async Task When_an_offcut_comes_out_too_thin_its_strip_is_replaced_and_said_so()
    {
        var request = Requests.FourSquares with { Pile = [.. Requests.FourSquares.Pile, Requests.Offcut("W9", "black-walnut", 21 * 16, 27, 15)] };
        var former = await Requests.PlanOf(request);
        var offcut = former.GlueUps[0].Strips.First(s => s.Offcut.StartsWith('W')).Offcut;

        var again = Again(Changed(request, offcut, o => o with { Thickness = Length.FromInches(1, 4) }), former);

        Assert.Empty(PlanAudit.Check(again));
        Assert.Equal("bench", Assert.Single(again.Made).Gift);
        Assert.DoesNotContain(again.GlueUps.SelectMany(g => g.Strips), s => s.Offcut == offcut);
        Assert.Contains(PlanChanges.Between(former, again), c => c.Kind is ChangeKind.Strip or ChangeKind.GlueUp);
    }

    [Fact]
    public async Task A_plan_made_from_another_is_never_worse_than_one_from_nothing_with_the_same_search()
    {
        var former = await Requests.PlanOf(Requests.TwoGifts);
        var request = Changed(former.Request, former.GlueUps[0].Strips[0].Offcut, o => o with { Length = o.Length - Length.FromInches(2) });

        var again = Again(request, former);

        Assert.Equal(Requests.Level(await Requests.PlanOf(request), LevelKind.GiftsMade).Value, Requests.Level(again, LevelKind.GiftsMade).Value);
        Assert.Empty(PlanAudit.Check(again));
    }

    private static Plan Again(PlanRequest request, Plan former) =>
        Assert.IsType<PlanOutcome.Planned>(Planner.PlanAsync(request, Requests.Quick, former).Result).Plan;

    private static PlanRequest Changed(PlanRequest request, string single, Func<Core.Pile.Offcut, Core.Pile.Offcut> change) => request with
    {
        // One of several alike becomes an entry of its own.
        Pile = [.. request.Pile.SelectMany(o => o.Pieces()).Select(o => o.Label == single ? change(o) : o)],
    };

    private static string Bare(Plan plan) => PlanJson.Write(plan with { Before = [], Levels = plan.Levels.RemoveAll(l => l.Kind == LevelKind.StripsAsBefore) });

    private static List<long> Values(Plan plan) => [.. plan.Levels.Where(l => l.Kind != LevelKind.StripsAsBefore).Select(l => l.Maximise ? l.Value : -l.Value)];

    private static bool IsBetter(List<long> one, List<long> other)
    {
        var first = one.Zip(other).FirstOrDefault(p => p.First != p.Second);
        return first.First > first.Second;
    }
}
