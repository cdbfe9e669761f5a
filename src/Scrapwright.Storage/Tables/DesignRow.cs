namespace Scrapwright.Storage.Tables;

/// <summary>One design of the workshop's own, as a document.</summary>
internal sealed class DesignRow
{
    public string Key { get; set; } = "";

    public string Json { get; set; } = "";
}
