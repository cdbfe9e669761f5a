namespace Scrapwright.Storage.Tables;

/// <summary>The only row of the table of the shop: the workshop's name and the shop as a document. No row means no name and a default shop.</summary>
internal sealed class ShopRow
{
    public const long OnlyId = 1;

    public long Id { get; set; } = OnlyId;

    public string Name { get; set; } = "";

    public string? Json { get; set; }
}
