namespace Scrapwright.Core.Wood;

/// <summary>Which woods' dust a limit is for.</summary>
public enum DustWood
{
    /// <summary>Any.</summary>
    Any,

    /// <summary>Broad-leaved trees, and mixtures with them.</summary>
    Hardwood,

    /// <summary>Conifers.</summary>
    Softwood,

    /// <summary>Western redcedar.</summary>
    WesternRedcedar,

    /// <summary>Every wood but western redcedar.</summary>
    OtherThanWesternRedcedar,
}
