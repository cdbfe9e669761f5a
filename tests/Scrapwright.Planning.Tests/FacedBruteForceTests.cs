using System.Collections.Immutable;
using CsCheck;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning.Tests;

/// <summary>
/// The planner against every way of giving five narrow offcuts, some of them thin, to two gifts, alone or glued face to face in pairs. They are too narrow to rip and long enough
/// for one strip only.
/// </summary>
public sealed class FacedBruteForceTests
{
    private static readonly string[] Woods = ["black-walnut", "sugar-maple"];
    private static readonly int[][] Ways = [[0], [1], [2], [0, 1], [0, 2], [1, 1], [1, 2], [2, 2]];

    [Fact]
    public void The_solver_finds_what_trying_every_pair_finds()
    {
        var faced = 0;
        Gen.Select(Gen.Int[0, 1], Gen.Int[20, 30], Gen.OneOf(Gen.Int[6, 9], Gen.Int[13, 15])).Array[6].Sample(
            sizes =>
            {
                var request = new PlanRequest
                {
                    Pile = [.. sizes.Select((s, i) => Requests.Offcut($"X{i}", Woods[s.Item1], 12 * 16, s.Item2, s.Item3))],
                    Gifts = [Requests.Squares("one", ("count", "2")) with { Circle = "club" }, Requests.Squares("two", ("count", "2")) with { Circle = "club", Priority = 2 }],
                };

                var outcome = Planner.PlanAsync(request, Requests.Quick with { Seconds = 8 }).GetAwaiter().GetResult();

                var best = new Tried(request).Best();
                if (outcome is PlanOutcome.Planned planned)
                {
                    faced += planned.Plan.Faced.Length;
                    Assert.Equal(best, planned.Plan.Levels.Select(l => l.Value));
                    Assert.All(planned.Plan.Levels, l => Assert.True(l.IsProven, $"{l.Kind} {l.Value} of {l.Bound}"));
                }
                else
                {
                    Assert.Equal(0, best[0]);
                }
            },
            iter: 15, threads: 1);

        Assert.NotEqual(0, faced);
    }

    private sealed class Tried
    {
        private readonly PlanRequest request;
        private readonly PanelNeeds needs;
        private readonly long[] weights;
        private readonly HashSet<Offcut> boards = [];
        private long[] best = [0, 0, 0, 0];

        internal Tried(PlanRequest request)
        {
            this.request = request;
            var product = ((DesignOutcome.Derived)GiftDesigns.Derive(request.Gifts, [], request.Shop)[0].Outcome).Product;
            needs = StripsByHand.Needs(product, 2, 1, request.Shop);
            var byPriority = PriorityWeights.Of(request.Gifts);
            weights = [.. request.Gifts.Select(g => byPriority[g.Priority])];
        }

        internal long[] Best()
        {
            Give([.. request.Pile], [], 0);
            return best;
        }

        /// <summary>Gives the first offcut that is left to nobody or a gift, whole or in layers, or glues it to a later one of its wood when both are too thin for anything.</summary>
        private void Give(ImmutableList<Offcut> left, ImmutableList<(Offcut Offcut, int Layers, int Gift, Length Rough)> given, int glued)
        {
            if (left.IsEmpty)
            {
                Note(given, glued);
                return;
            }

            var first = left[0];
            if (StripsByHand.IsThickEnough(first, 1, needs))
            {
                foreach (var way in Ways) Give(left.RemoveAt(0), given.AddRange(To(first, way, first.Thickness)), glued);
                return;
            }

            Give(left.RemoveAt(0), given, glued);
            foreach (var other in left.Skip(1).Where(o => o.Species == first.Species && !StripsByHand.IsThickEnough(o, 1, needs)))
            {
                // Each loses a jointed face of 1/32 in.
                var board = first with
                {
                    Label = first.Label + other.Label,
                    Width = Length.Min(first.Width, other.Width),
                    Thickness = first.Thickness + other.Thickness - Length.FromInches(1, 16),
                };
                boards.Add(board);
                foreach (var way in Ways.Where(w => w.Any(g => g > 0)))
                    Give(left.Remove(first).Remove(other), given.AddRange(To(board, way, first.Thickness + other.Thickness)), glued + 1);
            }
        }

        private static IEnumerable<(Offcut Offcut, int Layers, int Gift, Length Rough)> To(Offcut offcut, int[] way, Length rough) =>
            way.Where(gift => gift > 0).Select(gift => (offcut, way.Length, gift, rough));

        private void Note(ImmutableList<(Offcut Offcut, int Layers, int Gift, Length Rough)> given, int glued)
        {
            long made = 0;
            foreach (var gift in given.GroupBy(g => g.Gift))
            {
                if (!StripsByHand.Hold([.. gift.Select(g => (g.Offcut, g.Layers))], needs, SpreadOf)) return;
                made += weights[gift.Key - 1];
            }

            var woods = given.GroupBy(g => g.Gift).Select(g => g.Select(s => s.Offcut.Species).ToHashSet()).ToList();
            long[] found =
            [
                made, woods.Count == 2 && !woods[0].SetEquals(woods[1]) ? 1 : 0,
                given.Sum(g => (long)Math.Ceiling((decimal)needs.Overlap.Picometres / 1_000_000_000 * g.Offcut.Width.Picometres / 1_000_000_000 * g.Rough.Picometres / 1_000_000_000 / g.Layers)),
                woods.Count + glued,
            ];
            for (var i = 0; i < found.Length; i++)
            {
                if (found[i] != best[i])
                {
                    if (i < 2 ? found[i] > best[i] : found[i] < best[i]) best = found;
                    return;
                }
            }
        }

        /// <summary>Two jointed faces, each with a spread of 1/128 in: they add as squares.</summary>
        private Length SpreadOf(Offcut offcut) => boards.Contains(offcut) ? Length.FromPicometres((long)Math.Ceiling(Length.FromInches(1, 128).Picometres * Math.Sqrt(2))) : Length.Zero;
    }
}
