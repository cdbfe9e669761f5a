using CsCheck;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning.Tests;

/// <summary>
/// The planner against every possible way of giving six narrow offcuts to two gifts. The offcuts are too narrow to rip and long enough for one strip only,
/// so giving each to the first gift, the second or none is all there is, and one panel for both.
/// </summary>
public sealed class BruteForceTests
{
    private static readonly string[] Woods = ["black-walnut", "sugar-maple", "black-cherry", "white-ash"];

    [Fact]
    public void The_solver_finds_what_trying_everything_finds() =>
        Gen.Select(Gen.Int[0, 3], Gen.Int[20, 30], Gen.Int[13, 24]).Array[5].Select(Gen.Int[1, 2], Gen.Bool).Sample(
            (sizes, priority, circle) =>
            {
                var request = Request(sizes, priority, circle);

                var outcome = Planner.PlanAsync(request, Requests.Quick with { Seconds = 8 }).GetAwaiter().GetResult();

                var best = Best(request);
                if (outcome is PlanOutcome.Planned planned)
                {
                    Assert.Equal(best.ToList(), planned.Plan.Levels.Select(l => l.Value).ToList());
                    Assert.All(planned.Plan.Levels, l => Assert.True(l.IsProven, $"{l.Kind} {l.Value} of {l.Bound}"));
                }
                else
                {
                    Assert.Equal(0, best[0]);
                }
            },
            iter: 12, threads: 1);

    private static readonly int[][] Ways = [[0], [1], [2], [0, 1], [0, 2], [1, 1], [1, 2], [2, 2]];

    private static PlanRequest Request((int Wood, int Width, int Thickness)[] sizes, int priority, bool circle) => new()
    {
        Pile = [.. sizes.Select((s, i) => Requests.Offcut($"X{i}", Woods[s.Wood], 12 * 16, s.Width, s.Thickness))],
        Gifts =
        [
            Requests.Squares("one", ("count", "2")) with { Circle = circle ? "club" : "" },
            Requests.Squares("two", ("count", "2")) with { Circle = circle ? "club" : "", Priority = priority },
        ],
    };

    private static long[] Best(PlanRequest request)
    {
        var pile = request.Pile;
        var product = ((DesignOutcome.Derived)GiftDesigns.Derive(request.Gifts, [], request.Shop)[0].Outcome).Product;
        var needs = StripsByHand.Needs(product, 2, 1, request.Shop);
        var both = StripsByHand.Needs(product, 2, 2, request.Shop);
        var weights = PriorityWeights.Of(request.Gifts);
        long[] best = [0, 0, 0, 0];
        for (var code = 0; code < (int)Math.Pow(Ways.Length, pile.Length); code++)
        {
            // Each offcut goes whole to nobody or to one gift, or is sawn into two layers that go to nobody or to one gift each.
            var given = new List<(Offcut Offcut, int Layers)>[] { [], [], [] };
            for (int i = 0, rest = code; i < pile.Length; i++, rest /= Ways.Length)
            {
                foreach (var to in Ways[rest % Ways.Length])
                {
                    given[to].Add((pile[i], Ways[rest % Ways.Length].Length));
                }
            }

            long made = 0;
            long wood = 0;
            long loads = 0;
            for (var gift = 0; gift < 2; gift++)
            {
                if (StripsByHand.Hold(given[gift + 1], needs))
                {
                    made += weights[request.Gifts[gift].Priority];
                    wood += given[gift + 1].Sum(s => Cubic(needs.Overlap, s.Offcut.Width, s.Offcut.Thickness, s.Layers));
                    loads++;
                }
                else if (given[gift + 1].Count > 0)
                {
                    made = -1;
                    break;
                }
            }

            if (given[2].Count == 0 && request.Gifts[0].Circle.Length == 0 && StripsByHand.Hold(given[1], both))
            {
                // One panel, resawn: a layer for each gift.
                Note([request.Gifts.Sum(g => weights[g.Priority]), 0, given[1].Sum(s => Cubic(both.Overlap, s.Offcut.Width, s.Offcut.Thickness, s.Layers)), 1]);
            }

            if (made >= 0)
            {
                var differ = loads == 2 && request.Gifts[0].Circle.Length > 0 && !Species(given[1]).SetEquals(Species(given[2])) ? 1 : 0;
                Note([made, differ, wood, loads]);
            }
        }

        return best;

        void Note(long[] found)
        {
            if (IsBetter(found, best))
            {
                best = found;
            }
        }
    }

    private static bool IsBetter(long[] one, long[] other)
    {
        for (var i = 0; i < one.Length; i++)
        {
            if (one[i] != other[i])
            {
                return i < 2 ? one[i] > other[i] : one[i] < other[i];
            }
        }

        return false;
    }

    private static HashSet<string> Species(List<(Offcut Offcut, int Layers)> strips) => [.. strips.Select(s => s.Offcut.Species)];

    private static long Cubic(Length length, Length width, Length thickness, int layers) =>
        (long)Math.Ceiling((decimal)length.Picometres / 1_000_000_000 * width.Picometres / 1_000_000_000 * thickness.Picometres / 1_000_000_000 / layers);
}
