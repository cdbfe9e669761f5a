using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Plans.Ideas;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Ideas;

/// <summary>Which single purchase makes most of what is not made possible: each is added to the workshop, which is then planned again.</summary>
internal sealed class PurchaseSearch(IdeaBase start, IdeaBudget budget, IProgress<IdeasProgress>? progress)
{
    internal async Task<IdeasAnswer> AnswerAsync(IdeasAnswer answer)
    {
        var (request, plan, unmade) = start.HasList ? (start.Workshop, start.Plan, start.Unmade) : await OneOfEachAsync();
        answer = answer with { Unmade = [.. unmade.Select(u => NameOf(request, u.Gift))] };
        if (unmade.IsEmpty)
        {
            return answer;
        }

        var worth = plan?.Levels[0].Value ?? 0;
        var candidates = PurchaseCandidates.For(request, unmade);
        var isMost = plan is null ? NotEvenOne.IsProven(request, budget.Share(candidates.Length + 1), budget.Token) : plan.Levels[0].IsProven;
        var purchases = new List<Purchase>();
        var notTried = ImmutableArray.CreateBuilder<string>();
        foreach (var (tried, candidate) in candidates.Index())
        {
            if (!budget.HasTime || await TryAsync(request, plan, unmade, candidate, worth, budget.Share(candidates.Length - tried)) is not { } purchase)
            {
                notTried.Add(IdeaWords.NameOf(candidate, request.Shop));
                continue;
            }

            purchases.Add(purchase with { IsNeeded = isMost });
            progress?.Report(new IdeasProgress(tried + 1, candidates.Length, IdeaWords.NameOf(candidate, request.Shop), null, null));
        }

        return answer with { Purchases = IdeaRanks.Ranked(purchases), NotTried = notTried.ToImmutable() };
    }

    /// <summary>The purchase with what it makes possible; null when the search was ended before there was a plan.</summary>
    private async Task<Purchase?> TryAsync(PlanRequest request, Plan? plan, ImmutableArray<UnmadeGift> unmade, Purchase candidate, long worth, PlanLimits limits)
    {
        var bought = With(request, candidate);
        switch (await Planner.PlanAsync(bought, limits, plan, null, budget.Token))
        {
            case PlanOutcome.Impossible:
                return candidate;
            case PlanOutcome.Planned { Plan: var with }:
                var made = with.Made.Select(m => m.Gift).ToHashSet(StringComparer.Ordinal);
                var gain = with.Levels[0].Value - worth;

                // As much worth with other gifts is a trade, not a gain.
                return gain <= 0 ? candidate : candidate with { Worth = gain, Unlocks = [.. unmade.Select(u => u.Gift).Where(made.Contains).Select(g => NameOf(request, g))] };
            default:
                return null;
        }
    }

    private static PlanRequest With(PlanRequest request, Purchase purchase) => purchase switch
    {
        { Board: { } board } => request with { Pile = request.Pile.Add(board) },
        { Clamps: { } clamps } => request with { Shop = request.Shop with { Clamps = With(request.Shop.Clamps, clamps) } },
        _ => throw new ArgumentException("Neither a board nor clamps.", nameof(purchase)),
    };

    private static ImmutableArray<ClampKind> With(ImmutableArray<ClampKind> rack, ClampKind bought) =>
        rack.FirstOrDefault(c => c.Name == bought.Name && c.Reach == bought.Reach) is { } kind ? rack.Replace(kind, kind with { Count = kind.Count + bought.Count }) : rack.Add(bought);

    /// <summary>Without a list, what is wanted is one of every design as it stands.</summary>
    private async Task<(PlanRequest Request, Plan? Plan, ImmutableArray<UnmadeGift> Unmade)> OneOfEachAsync()
    {
        var labels = new IdeaLabels([]);
        var request = start.Workshop with
        {
            Gifts = [.. IdeaVariants.For(start.Workshop).Where(v => v.Step <= IdeaStep.OtherChoice).Select(v => v.ToGift(labels.Next(v.Design), start.NewPriority))],
            Choices = start.Workshop.Choices with { Pins = [], Orders = [] },
        };
        return await Planner.PlanAsync(request, budget.Share(4), null, null, budget.Token) switch
        {
            PlanOutcome.Planned planned => (request, planned.Plan, planned.Plan.Unmade),
            PlanOutcome.Impossible impossible => (request, null, impossible.Unmade),
            _ => (request, null, []),
        };
    }

    private string NameOf(PlanRequest request, string gift) => start.HasList
        ? gift
        : (request.DeriveDesigns().First(d => d.Gift.Label == gift).Outcome as DesignOutcome.Derived)?.Product.Summary ?? gift;
}
