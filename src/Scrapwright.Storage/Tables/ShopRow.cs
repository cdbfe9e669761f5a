namespace Scrapwright.Storage.Tables;

/// <summary>The only row of the table of the shop: the workshop's name, the shop, its hours, prices and jigs, the maker's choices and marks as documents. No row means no name and a default shop.</summary>
internal sealed class ShopRow
{
    public const long OnlyId = 1;

    public long Id { get; set; } = OnlyId;

    public string Name { get; set; } = "";

    public string? Json { get; set; }

    /// <summary>What the maker has decided, as a document; null for nothing.</summary>
    public string? Choices { get; set; }

    /// <summary>When the shop is worked in, as a document; null for the usual hours.</summary>
    public string? Hours { get; set; }

    /// <summary>What can be bought, as a document; null for nothing.</summary>
    public string? Prices { get; set; }

    /// <summary>The maker's own jigs, as a document; null for none.</summary>
    public string? Jigs { get; set; }

    /// <summary>What the maker has marked in the calendar, as a document; null for nothing.</summary>
    public string? Marks { get; set; }
}
