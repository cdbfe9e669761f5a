using CsCheck;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Calendar;

public sealed class ClampPoolTests
{
    private static readonly Gen<(int Reach, int Count)[]> Some = Gen.Select(Gen.Int[1, 5], Gen.Int[1, 4]).Array[1, 5];

    [Fact]
    public void The_resources_allow_just_what_clamps_in_hand_allow() => Gen.Select(Some, Some).Sample((rack, wanted) =>
    {
        var shop = new Shop { Clamps = [.. rack.Select(c => new ClampKind("c", Length.FromInches(c.Reach), c.Count))] };
        var pool = new ClampPool(shop);
        var tasks = wanted.Select(w => new TaskClamps(Length.FromInches(w.Reach), w.Count, 0)).ToArray();
        if (tasks.Any(t => pool.Reaching(t.Reach) < t.Count)) return;

        var taken = tasks.SelectMany(t => pool.Needs(t)).GroupBy(n => n.Resource).ToDictionary(g => g.Key, g => g.Sum(n => n.Amount));
        var allowed = taken.All(t => t.Value <= pool.Resources.Single(r => r.Id == t.Key).Capacity);

        Assert.Equal(ByHand(rack, wanted), allowed);
    });

    [Fact]
    public void A_clamp_that_reaches_farther_does_for_less()
    {
        // The usual rack: six of 24 in, four of 12 in.
        var pool = new ClampPool(new Shop());

        Assert.Equal([new ScheduleResource("clamps 12 in", 10), new ScheduleResource("clamps 24 in", 6)], pool.Resources.AsEnumerable());
        Assert.Equal([new ScheduleNeed("clamps 12 in", 3, 60)], pool.Needs(new(Length.FromInches(5), 3, 60)).AsEnumerable());
        Assert.Equal([new ScheduleNeed("clamps 12 in", 3, 60), new ScheduleNeed("clamps 24 in", 3, 60)], pool.Needs(new(Length.FromInches(25, 2), 3, 60)).AsEnumerable());
        Assert.Empty(pool.Needs(null));
    }

    // Clamp by clamp: whoever needs the longest chooses first.
    private static bool ByHand((int Reach, int Count)[] rack, (int Reach, int Count)[] wanted)
    {
        var clamps = rack.SelectMany(c => Enumerable.Repeat(c.Reach, c.Count)).Order().ToList();
        foreach (var (reach, count) in wanted.OrderByDescending(w => w.Reach))
        {
            for (var i = 0; i < count; i++)
            {
                // The longest there is: any that reaches would do, and none who come later need more.
                if (clamps.Count == 0 || clamps[^1] < reach) return false;
                clamps.RemoveAt(clamps.Count - 1);
            }
        }

        return true;
    }
}
