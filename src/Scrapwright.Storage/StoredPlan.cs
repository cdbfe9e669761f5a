namespace Scrapwright.Storage;

/// <summary>A plan as kept.</summary>
/// <param name="Id">Which; grows.</param>
/// <param name="Created">When it was found, UTC.</param>
/// <param name="Fingerprint">Fingerprint of the request it was made from.</param>
/// <param name="Json">The plan as <see cref="Core.Plans.PlanJson.Write"/> writes it.</param>
public sealed record StoredPlan(long Id, DateTime Created, string Fingerprint, string Json);
