using System.Collections.Immutable;
using CsCheck;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Ideas;
using Scrapwright.Planning.Ideas;

namespace Scrapwright.Planning.Tests.Ideas;

/// <summary>
/// The largest number of one gift against every way of giving seven narrow offcuts to two gifts. The offcuts are too narrow to rip, too thin to resaw and long enough for
/// one strip only, and a gift takes three of them, so giving each to the first gift, the second or none is all there is.
/// </summary>
public sealed class LargestNumberTests
{
    private static readonly string[] Woods = ["black-walnut", "sugar-maple", "black-cherry"];

    private static readonly IdeaVariant Pair = new("striped-squares", IdeaStep.AsItStands, "two squares", ImmutableSortedDictionary<string, string>.Empty.Add("count", "2"));

    [Fact]
    public void It_is_what_trying_everything_finds() =>
        Gen.Select(Gen.Int[0, 2], Gen.Int[20, 30], Gen.Int[13, 14]).Array[7].Sample(
            sizes =>
            {
                var request = new PlanRequest { Pile = [.. sizes.Select((s, i) => Requests.Offcut($"X{i}", Woods[s.Item1], 12 * 16, s.Item2, s.Item3))] };
                var search = new ProposalSearch(new IdeaBase { Workshop = request }, new IdeaBudget(Requests.Quick, TestContext.Current.CancellationToken));

                var (found, isImpossible) = search.FindLargestAsync(Pair, Requests.Quick with { Seconds = 8 }).GetAwaiter().GetResult();

                var most = Most(request);
                Assert.Equal(most == 0, isImpossible);
                Assert.Equal(most, found?.Proposal.Count ?? 0);
                if (found is not null)
                {
                    Assert.True(found.Proposal.IsProven, IdeaWords.Number(found.Proposal));
                    Assert.Equal(found.Proposal.Gifts.Select(g => g.Label), found.Plan.Made.Select(m => m.Gift));
                    Assert.Empty(PlanAudit.Check(found.Plan));
                }
            },
            iter: 10,
            threads: 1);

    private static int Most(PlanRequest request)
    {
        var product = ((DesignOutcome.Derived)GiftDesigns.Derive([Pair.ToGift("x", 1)], [], request.Shop)[0].Outcome).Product;
        var needs = StripsByHand.Needs(product, 2, 1, request.Shop);
        Assert.All(request.Pile, o => Assert.False(StripsByHand.IsThickEnough(o, 2, needs)));
        var most = 0;
        for (var code = 0; code < (int)Math.Pow(3, request.Pile.Length); code++)
        {
            var given = new List<(Offcut, int)>[] { [], [], [] };
            for (int i = 0, rest = code; i < request.Pile.Length; i++, rest /= 3)
            {
                given[rest % 3].Add((request.Pile[i], 1));
            }

            most = Math.Max(most, given.Skip(1).Count(strips => StripsByHand.Hold(strips, needs)));
        }

        return most;
    }
}
