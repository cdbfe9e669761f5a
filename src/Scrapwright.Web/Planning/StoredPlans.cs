using System.Text.Json;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Storage;

namespace Scrapwright.Web.Planning;

/// <summary>What becomes of a kept plan when the maker decides something.</summary>
internal static class StoredPlans
{
    /// <summary>A kept plan that still holds; null when there is none, when an older program wrote it otherwise, or when it does not.</summary>
    internal static Plan? FindSound(StoredPlan? stored)
    {
        if (stored is null) return null;
        try
        {
            var plan = PlanJson.Read(stored.Json);
            return PlanAudit.Check(plan).IsEmpty ? plan : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>
    /// Keeps choices. When the latest plan is of the workshop as it was, and keeps to the new choices too, it is the plan of the workshop as it is: its bounds hold the more, as only more is asked for.
    /// </summary>
    internal static async Task PutChoicesAsync(this WorkshopStore store, MakerChoices choices, PlanRequest before, CancellationToken cancellationToken)
    {
        await store.PutChoicesAsync(choices, cancellationToken);
        if (!choices.AskAll(before.Choices) || await store.FindLatestPlanAsync(cancellationToken) is not { } stored || stored.Fingerprint != PlanJson.Fingerprint(before)) return;
        var request = before with { Choices = choices };
        var plan = PlanJson.Read(stored.Json) with { Request = request, Fingerprint = PlanJson.Fingerprint(request) };
        if (PlanAudit.Check(plan).IsEmpty) await store.AddPlanAsync(plan, cancellationToken);
    }
}
