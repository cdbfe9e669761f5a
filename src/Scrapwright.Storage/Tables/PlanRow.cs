namespace Scrapwright.Storage.Tables;

/// <summary>One plan, as a document.</summary>
internal sealed class PlanRow
{
    public long Id { get; set; }

    public DateTime Created { get; set; }

    public string Fingerprint { get; set; } = "";

    public string Json { get; set; } = "";

    public StoredPlan Stored() => new(Id, DateTime.SpecifyKind(Created, DateTimeKind.Utc), Fingerprint, Json);
}
