using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Ideas;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Planning.Ideas;

/// <summary>What ideas come beside: the gifts on the list that a plan makes, which stay made, or nothing.</summary>
internal sealed record IdeaBase
{
    private const int LowestPriority = 9;
    private const int StandardPriority = 2;

    /// <summary>The workshop as it is.</summary>
    internal required PlanRequest Workshop { get; init; }

    /// <summary>The plan whose gifts stay made; null when there are none.</summary>
    internal Plan? Plan { get; init; }

    /// <summary>Labels of the gifts that stay made.</summary>
    internal ImmutableArray<string> Planned { get; init; } = [];

    /// <summary>Gifts on the list that are not made, with reasons; empty when the list is not looked at.</summary>
    internal ImmutableArray<UnmadeGift> Unmade { get; init; } = [];

    /// <summary>True when the list is looked at and has a gift.</summary>
    internal bool HasList { get; init; }

    /// <summary>Wood in the gifts that stay made.</summary>
    internal Volume InGifts => Plan is null ? Volume.Zero : InGiftsOf(Plan);

    /// <summary>Priority that puts a gift behind all on the list.</summary>
    internal int NewPriority => Workshop.Gifts.IsEmpty ? StandardPriority : Math.Min(LowestPriority, Workshop.Gifts.Max(g => g.Priority) + 1);

    /// <summary>Finds the base: the list's own plan where it is given, else one that is made now.</summary>
    internal static async Task<IdeaBase> MakeAsync(PlanRequest workshop, Plan? plan, bool besideGifts, PlanLimits limits, CancellationToken cancellationToken)
    {
        if (!besideGifts || workshop.Gifts.IsEmpty)
        {
            return new IdeaBase { Workshop = workshop };
        }

        if (plan is null || plan.Fingerprint != PlanJson.Fingerprint(workshop))
        {
            switch (await Planner.PlanAsync(workshop, limits, plan, null, cancellationToken))
            {
                case PlanOutcome.Planned planned:
                    plan = planned.Plan;
                    break;
                case PlanOutcome.Impossible impossible:
                    return new IdeaBase { Workshop = workshop, HasList = true, Unmade = impossible.Unmade };
                default:
                    return new IdeaBase { Workshop = workshop, HasList = true };
            }
        }

        return new IdeaBase { Workshop = workshop, HasList = true, Plan = plan, Planned = [.. plan.Made.Select(m => m.Gift)], Unmade = plan.Unmade };
    }

    /// <summary>
    /// A request in which the gifts that stay made outweigh everything, and new gifts come after them in the order of their groups. Gifts that are not made are left
    /// out, unless one that is made holds one of them.
    /// </summary>
    internal PlanRequest With(params IReadOnlyList<Gift>[] groups)
    {
        var planned = Workshop.Gifts.Where(g => Planned.Contains(g.Label)).Select(g => g with { Priority = 1 }).ToImmutableArray();
        var added = groups.SelectMany((group, i) => group.Select(g => g with { Priority = 2 + i })).ToImmutableArray();
        var held = GiftDesigns.Derive(planned, Workshop.Designs, Workshop.Shop).All(d => d.Outcome is DesignOutcome.Derived)
            ? []
            : Workshop.Gifts.Where(g => !Planned.Contains(g.Label)).Select(g => g with { Priority = LowestPriority }).ToImmutableArray();
        var request = Workshop with { Gifts = [.. planned, .. held, .. added] };
        return request with { Choices = ChoicesOf(request) };
    }

    /// <summary>Weight of the gifts that stay made in such a request.</summary>
    internal long PlannedWorth(PlanRequest request)
    {
        var weights = PriorityWeights.Of(request.Gifts);
        return request.Gifts.Where(g => Planned.Contains(g.Label)).Sum(g => weights[g.Priority]);
    }

    /// <summary>True when a plan makes all that stay made.</summary>
    internal bool IsKeptBy(Plan plan)
    {
        var made = plan.Made.Select(m => m.Gift).ToHashSet(StringComparer.Ordinal);
        return Planned.All(made.Contains);
    }

    /// <summary>Some gifts of a plan as a proposal.</summary>
    /// <param name="title">What they are.</param>
    /// <param name="gifts">The gifts, all made by the plan.</param>
    /// <param name="plan">The plan.</param>
    internal Proposal Propose(string title, ImmutableArray<Gift> gifts, Plan plan)
    {
        var usedUp = Plan is null ? [] : UsedUpOf(Plan).ToHashSet(StringComparer.Ordinal);
        return new Proposal
        {
            Title = title,
            Gifts = [.. gifts.Select(g => g with { Priority = NewPriority })],
            InGifts = InGiftsOf(plan) - InGifts,
            WoodUsed = LevelOf(plan, LevelKind.WoodUsed) - (Plan is null ? 0 : LevelOf(Plan, LevelKind.WoodUsed)),
            ClampLoads = (int)(LevelOf(plan, LevelKind.ClampLoads) - (Plan is null ? 0 : LevelOf(Plan, LevelKind.ClampLoads))),
            UsedUp = [.. UsedUpOf(plan).Where(o => !usedUp.Contains(o))],
        };
    }

    private static Volume InGiftsOf(Plan plan) => Volume.Sum(plan.Ledger.Select(r => r.Parts));

    private static IEnumerable<string> UsedUpOf(Plan plan) => plan.Ledger.Where(r => r.Kept == Volume.Zero).Select(r => r.Offcut).Except(plan.Faced.Select(f => f.Label));

    private static long LevelOf(Plan plan, LevelKind kind) => plan.Levels.First(l => l.Kind == kind).Value;

    /// <summary>Pins and orders are for gifts; without theirs they mean nothing. Saved and used wood stays so.</summary>
    private MakerChoices ChoicesOf(PlanRequest request)
    {
        var labels = request.Gifts.Select(g => g.Label).ToHashSet(StringComparer.Ordinal);
        return Workshop.Choices with
        {
            Pins = [.. Workshop.Choices.Pins.Where(p => labels.Contains(p.Gift))],
            Orders = [.. Workshop.Choices.Orders.Where(o => labels.Contains(o.Gift))],
        };
    }
}
