namespace Scrapwright.Core.Plans;

/// <summary>Something in a plan that does not hold.</summary>
/// <param name="Where">Which step, glue-up, gift or row.</param>
/// <param name="Found">What the plan says.</param>
/// <param name="Expected">What follows from the rest of the plan.</param>
public sealed record AuditFinding(string Where, string Found, string Expected);
