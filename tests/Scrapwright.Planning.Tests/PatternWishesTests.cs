using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning.Tests;

public sealed class PatternWishesTests
{
    [Fact]
    public async Task Alternating_takes_two_woods_by_turns_where_three_would_save_wood()
    {
        var plan = await PlanOf(("pattern", "alternating"), ("strips", "4"));

        var woods = Woods(plan.GlueUps[0]);
        Assert.Equal(2, woods.Distinct().Count());
        Assert.All(woods.Zip(woods.Skip(1)), pair => Assert.NotEqual(pair.First, pair.Second));
        Assert.True(Requests.Level(plan, LevelKind.Looks).IsProven);
    }

    [Fact]
    public async Task An_accent_is_one_narrow_strip_ripped_off_among_strips_of_one_other_wood()
    {
        var plan = await PlanOf(("pattern", "accent"), ("strips", "3"));

        var strips = plan.GlueUps[0].Strips;
        var woods = Woods(plan.GlueUps[0]);
        var accent = Assert.Single(strips, s => woods.Count(w => w == Wood(s.Offcut)) == 1);
        Assert.Equal(2, woods.Distinct().Count());
        Assert.True(accent.Width <= Length.FromInches(1), $"{accent.Width}");
        Assert.NotSame(strips[0], accent);
        Assert.NotSame(strips[^1], accent);
        Assert.Equal(1, Requests.Level(plan, LevelKind.Looks).Value);
    }

    [Fact]
    public async Task A_gift_can_ask_for_more_contrast_than_the_shop()
    {
        var plan = await PlanOf(("least-contrast", "30"));

        Assert.InRange(plan.GlueUps[0].LeastContrastHundredths, 3000, 10_000);
        Assert.DoesNotContain("C", plan.GlueUps[0].Strips.Select(s => Wood(s.Offcut)));
    }

    [Theory]
    [InlineData("alternating", true, false)]
    [InlineData("alike", true, true)]
    [InlineData("any", null, null)]
    public async Task Hearts_lie_as_wished(string hearts, bool? first, bool? second)
    {
        var plan = await PlanOf(("hearts", hearts));

        Assert.Equal([first, second, first], plan.GlueUps[0].Strips.Take(3).Select(s => s.HeartUp));
    }

    [Theory]
    [InlineData("one", 1)]
    [InlineData("each", 3)]
    public async Task A_set_comes_from_one_panel_or_each_piece_from_its_own(string panels, int glueUps)
    {
        var plan = await PlanOf(("from-panels", panels), ("count", "3"));

        Assert.Equal(glueUps, plan.GlueUps.Length);
    }

    [Fact]
    public async Task Pieces_that_shall_each_be_different_are_of_different_woods()
    {
        var plan = await PlanOf(("from-panels", "each"), ("count", "3"));

        Assert.Equal(3, plan.GlueUps.Select(g => string.Join('+', Woods(g).Distinct().Order())).Distinct().Count());
        Assert.Equal(3, Requests.Level(plan, LevelKind.Looks).Value);
        Assert.True(Requests.Level(plan, LevelKind.Looks).IsProven);
    }

    private static async Task<Plan> PlanOf(params (string Key, string Value)[] options)
    {
        var plan = await Requests.PlanOf(Requests.FourSquares with
        {
            Pile =
            [
                .. Requests.FourSquares.Pile,
                Requests.Offcut("C1", "black-cherry", 18 * 16, 22, 13), Requests.Offcut("C2", "black-cherry", 18 * 16, 22, 13),
                Requests.Offcut("W4", "black-walnut", 18 * 16, 40, 14), Requests.Offcut("M4", "sugar-maple", 18 * 16, 26, 14),
            ],
            Gifts = [Requests.Squares("bench", options)],
        });
        Assert.Empty(PlanAudit.Check(plan));
        return plan;
    }

    private static string[] Woods(GlueUp glueUp) => [.. glueUp.Strips.Select(s => Wood(s.Offcut))];

    private static string Wood(string offcut) => offcut[..1];
}
