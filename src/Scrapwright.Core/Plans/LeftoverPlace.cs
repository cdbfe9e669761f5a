namespace Scrapwright.Core.Plans;

/// <summary>Where a leftover goes.</summary>
public enum LeftoverPlace
{
    /// <summary>Back to the pile: at least as large as the shop keeps.</summary>
    Pile,

    /// <summary>To the scrap bin: smaller than the shop keeps, or with a defect.</summary>
    ScrapBin,
}
