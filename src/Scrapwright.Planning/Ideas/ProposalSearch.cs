using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Ideas;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Ideas;

/// <summary>How many gifts of a kind a pile gives beside those that stay made, and which mixtures.</summary>
internal sealed class ProposalSearch(IdeaBase start, IdeaBudget budget)
{
    /// <summary>Most gifts of one kind that are looked for; nobody needs more.</summary>
    internal const int MostOfOne = 24;

    /// <summary>So many more than the first placement finds are asked of the search.</summary>
    private const int AskedBeyondFirst = 2;

    /// <summary>The largest number of one kind.</summary>
    /// <returns>The proposal, or null and whether it is proven that there can be none.</returns>
    internal async Task<(FoundProposal? Found, bool IsImpossible)> FindLargestAsync(IdeaVariant variant, PlanLimits limits)
    {
        var (first, bound) = Look(variant);
        if (bound == 0)
        {
            return (null, true);
        }

        FoundProposal? best = null;
        int? atMost = bound < MostOfOne ? bound : null;
        var want = Math.Min(bound, first + AskedBeyondFirst);
        while (budget.HasTime)
        {
            var gifts = Copies(variant, want);
            var request = start.With(gifts);
            if (await Planner.PlanAsync(request, limits with { Seconds = limits.Seconds / 2 }, start.Plan, null, budget.Token) is not PlanOutcome.Planned { Plan: var plan } || !start.IsKeptBy(plan))
            {
                break;
            }

            var made = Made(gifts, plan);
            var reached = (int)Math.Min(want, (plan.Levels[0].Bound - start.PlannedWorth(request)) / WeightOf(request, gifts[0]));

            // What many are no more than so many of, all are no more than either; unless two that share a glue-up pass a machine that one is too short for.
            atMost = reached < want && (start.Workshop.Shop.WorksSmallPiecesByHand || want == MostOfOne) ? Math.Min(atMost ?? reached, reached) : atMost;
            if (made.Length > (best?.Proposal.Count ?? 0))
            {
                best = new FoundProposal(variant, start.Propose(variant.Title, made, plan), plan);
            }

            if (made.Length < want || want >= bound)
            {
                break;
            }

            want = Math.Min(bound, want * 2);
        }

        return best is null
            ? (null, atMost == 0 || NotEvenOne.IsProven((start with { Planned = [] }).With(Copies(variant, 2)), limits, budget.Token))
            : (best with { Proposal = best.Proposal with { AtMost = atMost } }, false);
    }

    /// <summary>One of each kind, as many kinds as can be.</summary>
    internal async Task<FoundProposal?> FindAllKindsAsync(IReadOnlyList<IdeaVariant> kinds, PlanLimits limits)
    {
        var labels = new IdeaLabels(start.Workshop.Gifts.Select(g => g.Label));
        var gifts = kinds.Select(k => k.ToGift(labels.Next(k.Design), start.NewPriority)).ToImmutableArray();
        return await FindAsync("One each of as many kinds as can be", limits, gifts) is { } found
            ? found with { Proposal = found.Proposal with { AtMost = found.Proposal.Count == kinds.Count ? kinds.Count : null } }
            : null;
    }

    /// <summary>One of each kind, then as many of one of them as the rest gives.</summary>
    internal Task<FoundProposal?> FindOneEachAndManyAsync(IReadOnlyList<IdeaVariant> kinds, IdeaVariant many, int count, PlanLimits limits)
    {
        var labels = new IdeaLabels(start.Workshop.Gifts.Select(g => g.Label));
        var each = kinds.Select(k => k.ToGift(labels.Next(k.Design), start.NewPriority)).ToImmutableArray();
        var rest = Enumerable.Range(0, count).Select(_ => many.ToGift(labels.Next(many.Design), start.NewPriority)).ToImmutableArray();
        return FindAsync($"One of each kind, and as many as the rest gives of: {many.Title}", limits, each, rest);
    }

    private async Task<FoundProposal?> FindAsync(string title, PlanLimits limits, params ImmutableArray<Gift>[] groups)
    {
        var request = start.With([.. groups]);
        var all = groups.SelectMany(g => g).ToImmutableArray();
        return await Planner.PlanAsync(request, limits, start.Plan, null, budget.Token) is PlanOutcome.Planned { Plan: var plan } && start.IsKeptBy(plan) && Made(all, plan) is { Length: > 0 } made
            ? new FoundProposal(null, start.Propose(title, made, plan) with { IsMixture = true }, plan)
            : null;
    }

    private static ImmutableArray<Gift> Made(ImmutableArray<Gift> gifts, Plan plan)
    {
        var made = plan.Made.Select(m => m.Gift).ToHashSet(StringComparer.Ordinal);
        return [.. gifts.Where(g => made.Contains(g.Label))];
    }

    private ImmutableArray<Gift> Copies(IdeaVariant variant, int count)
    {
        var labels = new IdeaLabels(start.Workshop.Gifts.Select(g => g.Label));
        return [.. Enumerable.Range(0, count).Select(_ => variant.ToGift(labels.Next(variant.Design), start.NewPriority))];
    }

    private static long WeightOf(PlanRequest request, Gift gift) => PriorityWeights.Of(request.Gifts)[request.Gifts.First(g => g.Label == gift.Label).Priority];

    /// <summary>How many the first placement makes, and how many the relaxation says there can be; no more than are looked for.</summary>
    private (int First, int Bound) Look(IdeaVariant variant)
    {
        var gifts = Copies(variant, MostOfOne);
        var request = start.With(gifts);
        var problem = ProblemMaker.Make(request, start.Plan);
        var options = new SegmentOptions(problem);
        var bound = (CountBound.MostWorth(problem, options) - start.PlannedWorth(request)) / WeightOf(request, gifts[0]);
        var first = FormerPlacement.Start(problem, options);
        var labels = gifts.Select(g => g.Label).ToHashSet(StringComparer.Ordinal);
        return (problem.Gifts.Count(g => first.Made[g.Index] && labels.Contains(g.Gift.Label)), (int)Math.Clamp(bound, 0, MostOfOne));
    }
}
