namespace Scrapwright.Storage.Tables;

/// <summary>One planning run; what it reported last is a document.</summary>
internal sealed class RunRow
{
    public long Id { get; set; }

    public string State { get; set; } = "";

    public DateTime Started { get; set; }

    public string Json { get; set; } = "";
}
