using System.Collections.Immutable;
using System.Text.Json;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Storage;

namespace Scrapwright.Web.Planning;

/// <summary>What becomes of a kept plan when the maker decides something.</summary>
internal static class StoredPlans
{
    /// <summary>A kept plan that still holds; null when there is none, when an older program wrote it otherwise, or when it does not.</summary>
    internal static Plan? FindSound(StoredPlan? stored) => stored is not null && Read(stored) is { } plan && PlanAudit.Check(plan).IsEmpty ? plan : null;

    private static Plan? Read(StoredPlan stored)
    {
        try
        {
            return PlanJson.Read(stored.Json);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>
    /// Keeps choices. When the latest plan is of the workshop as it was, and keeps to the new choices too, it is the plan of the workshop as it is: its bounds hold the more, as only more is asked for.
    /// When less is asked for, its bounds may be too narrow; then it takes those it had while no more than this was asked for.
    /// </summary>
    internal static async Task PutChoicesAsync(this WorkshopStore store, MakerChoices choices, PlanRequest before, CancellationToken cancellationToken)
    {
        await store.PutChoicesAsync(choices, cancellationToken);
        if (await store.FindLatestPlanAsync(cancellationToken) is not { } stored || stored.Fingerprint != PlanJson.Fingerprint(before)) return;
        var request = before with { Choices = choices };
        var latest = PlanJson.Read(stored.Json) with { Request = request, Fingerprint = PlanJson.Fingerprint(request) };
        var plan = choices.AskAll(before.Choices) ? latest : FindWithLess([.. (await store.GetPlansAsync(cancellationToken)).Skip(1)], latest);
        if (plan is not null && PlanAudit.Check(plan).IsEmpty) await store.AddPlanAsync(plan, cancellationToken);
    }

    /// <summary>The latest plan with the levels it had under choices that ask for no more than the present ones; null when it was never kept under such.</summary>
    private static Plan? FindWithLess(ImmutableArray<StoredPlan> kept, Plan latest)
    {
        var asLatest = PlanJson.Write(latest with { Levels = [] });
        foreach (var stored in kept)
        {
            // The audit last: it takes longest, and most plans that are kept are other ones.
            if (Read(stored) is { } old && latest.Request.Choices.AskAll(old.Request.Choices)
                && PlanJson.Write(old with { Request = old.Request with { Choices = latest.Request.Choices }, Fingerprint = latest.Fingerprint, Levels = [] }) == asLatest
                && PlanAudit.Check(old).IsEmpty)
            {
                return latest with { Levels = old.Levels };
            }
        }

        return null;
    }
}
