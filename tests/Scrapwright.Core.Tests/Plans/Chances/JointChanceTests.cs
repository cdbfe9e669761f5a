using CsCheck;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Plans.Chances;

namespace Scrapwright.Core.Tests.Plans.Chances;

public sealed class JointChanceTests
{
    [Fact]
    public void No_demands_always_hold() => Assert.Equal(1, JointChance.Of([]));

    [Fact]
    public void A_size_without_spread_holds_or_does_not()
    {
        Assert.Equal(1, JointChance.Of([new Demand(0, [])]));
        Assert.Equal(0, JointChance.Of([new Demand(-0.001, [])]));
    }

    [Fact]
    public void Demands_that_share_nothing_multiply() =>
        Assert.Equal(Chance.NormalShare(1) * Chance.NormalShare(0.5), JointChance.Of([new Demand(1, [(1, 1)]), new Demand(1, [(2, 2)])]), 1e-9);

    [Fact]
    public void The_same_demand_twice_counts_once() =>
        Assert.Equal(Chance.NormalShare(1.2), JointChance.Of([new Demand(1.2, [(1, 1)]), new Demand(1.2, [(1, 1)])]), 1e-9);

    [Fact]
    public void Of_two_demands_on_one_draw_the_harder_one_decides() =>
        Assert.Equal(Chance.NormalShare(0.4), JointChance.Of([new Demand(1.2, [(1, 1)]), new Demand(0.8, [(1, 2)])]), 1e-9);

    // Sheppard's formula, 1/4 + arcsin(ρ) / 2π: two normal sizes with correlation ρ are both above their means. From memory.
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    public void Two_sizes_that_share_a_draw_are_both_above_their_means_as_often_as_Sheppard_says(double correlation)
    {
        double shared = Math.Sqrt(correlation), own = Math.Sqrt(1 - correlation);

        var chance = JointChance.Of([new Demand(0, [(1, shared), (2, own)]), new Demand(0, [(1, shared), (3, own)])]);

        Assert.Equal(0.25 + (Math.Asin(correlation) / (2 * Math.PI)), chance, 1e-4);
    }

    // n independent draws less one shared draw of the same spread: all above zero when the shared one is the least of n + 1, which is one time in n + 1.
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(12)]
    public void The_thinnest_of_strips_alike_is_thicker_than_another_one_time_in_all_of_them(int strips) =>
        Assert.Equal(1.0 / (strips + 1), JointChance.Of(Enumerable.Range(1, strips).Select(s => new Demand(0, [(0, 1), (s, 1)]))), 1e-4);

    // Three and more draws shared by all demands in different shares: against a long row of random trials.
    [Fact]
    public void Many_shared_draws_agree_with_random_trials() =>
        Gen.Select(Gen.Int[2, 6], Gen.Int[2, 6], Gen.Int[0, 1000]).Sample(
            (demands, draws, seed) =>
            {
                var random = new Random(seed);
                Demand[] all = [.. Enumerable.Range(0, demands).Select(d => new Demand(
                    (random.NextDouble() * 3) - 0.5,
                    [.. Enumerable.Range(0, draws).Where(w => (w + d) % 3 != 2).Select(w => (w, 0.2 + random.NextDouble())), (100 + d, 0.3)]))];

                Assert.Equal(Tried(all, random), JointChance.Of(all), 0.01);
            },
            iter: 30, threads: 1);

    [Fact]
    public void Sharing_draws_never_makes_sizes_hold_less_often_than_apart() =>
        Gen.Select(Gen.Double[-1, 2].Array[2, 5], Gen.Double[0.1, 2]).Sample((over, shared) =>
        {
            Demand[] all = [.. over.Select((o, i) => new Demand(o, [(0, shared), (i + 1, 0.5)]))];

            Assert.True(JointChance.Of(all) >= all.Aggregate(1.0, (p, d) => p * JointChance.Of(d)) - 1e-3);
        });

    private static double Tried(Demand[] demands, Random random)
    {
        const int Trials = 100_000;
        var held = 0;
        for (var trial = 0; trial < Trials; trial++)
        {
            var draws = new Dictionary<int, double>();
            held += demands.All(d => d.OverMm + d.Draws.Sum(w => w.SpreadMm * Draw(w.Draw)) >= 0) ? 1 : 0;

            double Draw(int draw)
            {
                if (!draws.TryGetValue(draw, out var value))
                {
                    draws[draw] = value = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
                }

                return value;
            }
        }

        return held / (double)Trials;
    }
}
