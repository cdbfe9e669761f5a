namespace Scrapwright.Core.Gifts;

/// <summary>How much a gift is like one that its recipient has had; the more, the worse.</summary>
public enum Likeness
{
    /// <summary>The same design, in other woods or in woods that are not known.</summary>
    SameDesign,

    /// <summary>The same design in the same woods, but not in all else.</summary>
    SameWoods,

    /// <summary>The same design with the same options.</summary>
    Same,
}
