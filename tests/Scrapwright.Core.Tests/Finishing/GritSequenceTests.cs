using System.Collections.Immutable;
using CsCheck;
using Scrapwright.Core.Finishing;

namespace Scrapwright.Core.Tests.Finishing;

public sealed class GritSequenceTests
{
    private static GritSequence From(string first, string last, double step, params string[] onHand) =>
        GritSequence.From(GritTable.Get(first), GritTable.Get(last), step, [.. onHand.Select(GritTable.Get)]);

    [Fact]
    public void The_fewest_grits_within_the_step_are_taken() =>
        // P120 to P220 is 1.84, above 1.8. P150 leaves 1.25 and 1.47, P180 1.52 and 1.21.
        Assert.Equal("P120, P150, P220", Assert.IsType<GritSequence.Found>(From("P120", "P220", 1.8, "P220", "P180", "P80", "P120", "P150", "P320")).ToString());

    [Fact]
    public void A_larger_step_leaves_grits_out() =>
        Assert.Equal("P120, P220", Assert.IsType<GritSequence.Found>(From("P120", "P220", 1.84, "P120", "P150", "P180", "P220")).ToString());

    [Fact]
    public void A_gap_names_the_grit_to_buy()
    {
        var gap = Assert.IsType<GritSequence.Gap>(From("P80", "P220", 1.8, "P80", "P220"));

        // 201/68 = 2.96 needs one grit between: 201/x and x/68 both at most 1.8 leaves 111.7 to 122.4, which no FEPA grit has; so two.
        Assert.Equal(2, gap.Buy.Length);
        Assert.Equal(4, gap.Grits.Length);
        Assert.Equal(["P80", "P220"], gap.Grits.Except(gap.Buy).Select(g => g.Mark));
    }

    [Fact]
    public void A_grit_within_a_step_stands_in_for_the_first_and_the_last() =>
        Assert.Equal("P100, P150, P240", Assert.IsType<GritSequence.Found>(From("P120", "P220", 1.8, "P100", "P150", "P240")).ToString());

    [Fact]
    public void What_is_far_off_stands_in_for_nothing()
    {
        var gap = Assert.IsType<GritSequence.Gap>(From("P120", "P220", 1.8, "P24", "P1000"));

        Assert.Equal("P120", gap.Grits[0].Mark);
        Assert.Equal("P220", gap.Grits[^1].Mark);
        Assert.Equal(gap.Grits, gap.Buy);
    }

    [Fact]
    public void With_nothing_on_hand_all_is_to_buy() => Assert.Equal(3, Assert.IsType<GritSequence.Gap>(From("P120", "P220", 1.8)).Buy.Length);

    [Fact]
    public void A_surface_finer_than_the_last_grit_takes_that_one_alone() => Assert.Equal("P120", From("P180", "P120", 1.8, "P120", "P180").ToString());

    [Theory]
    [InlineData(1)]
    [InlineData(0.5)]
    [InlineData(double.NaN)]
    public void A_step_that_is_none_finds_no_way(double step)
    {
        var gap = Assert.IsType<GritSequence.Gap>(From("P80", "P220", step, "P80", "P120", "P220"));

        Assert.Empty(gap.Buy);
        Assert.Empty(gap.Grits);
    }

    [Fact]
    public void Both_scales_are_compared_by_particle() =>
        // CAMI 150 (92 µm) lies between FEPA P120 (125) and P220 (68).
        Assert.Equal("P120, 150, P220", Assert.IsType<GritSequence.Found>(From("P120", "P220", 1.8, "P120", "150", "P220")).ToString());

    [Fact]
    public void No_way_found_is_longer_or_steeper_than_one_found_by_trying_all() =>
        Gen.Select(Gen.Int[0, 27].Array[0, 7], Gen.Int[4, 14], Gen.Int[1, 8], Gen.Double[1.15, 2.4]).Sample((marks, first, further, step) =>
        {
            var all = GritTable.All.Where(g => g.Scale == GritScale.Fepa).ToArray();
            var own = marks.Select(m => all[m]).Distinct().ToImmutableArray();
            var (from, to) = (all[first], all[Math.Min(first + further, 27)]);

            var found = GritSequence.From(from, to, step, own);

            var grits = found switch { GritSequence.Found f => f.Grits, GritSequence.Gap g => g.Grits, _ => [] };
            Assert.All(grits.Zip(grits.Skip(1)), pair => Assert.InRange(pair.First.ParticleMicrometres / pair.Second.ParticleMicrometres, 1, step));
            var shortest = ShortestByTryingAll(own.Where(g => Near(g, from, to, step)).ToArray(), from, to, step);
            if (shortest is { } fewest) Assert.Equal(fewest, Assert.IsType<GritSequence.Found>(found).Grits.Length);
            else Assert.IsType<GritSequence.Gap>(found);
        });

    private static bool Near(Grit grit, Grit from, Grit to, double step) =>
        grit.ParticleMicrometres <= from.ParticleMicrometres * step && grit.ParticleMicrometres >= to.ParticleMicrometres / step;

    // Every subset of the grits on hand; the first is the nearest at least as coarse as asked, the last the nearest at least as fine.
    private static int? ShortestByTryingAll(Grit[] own, Grit from, Grit to, double step)
    {
        var sorted = own.OrderByDescending(g => g.ParticleMicrometres).ToArray();
        var start = sorted.LastOrDefault(g => g.ParticleMicrometres >= from.ParticleMicrometres);
        var end = sorted.FirstOrDefault(g => g.ParticleMicrometres <= to.ParticleMicrometres);
        if (start is null || end is null) return null;
        int? best = null;
        for (var subset = 1; subset < 1 << sorted.Length; subset++)
        {
            var way = sorted.Where((_, i) => (subset >> i & 1) == 1).ToArray();
            if (way[0] != start || way[^1] != end) continue;
            if (way.Zip(way.Skip(1)).Any(p => p.First.ParticleMicrometres / p.Second.ParticleMicrometres > step)) continue;
            best = Math.Min(best ?? int.MaxValue, way.Length);
        }

        return best;
    }
}
