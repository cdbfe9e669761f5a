namespace Scrapwright.Core.Designs;

/// <summary>How the strips of a panel follow each other.</summary>
public enum StripPattern
{
    /// <summary>Neighbours as different as can be.</summary>
    Contrast,

    /// <summary>The same species from the middle outwards on both sides.</summary>
    Mirrored,

    /// <summary>
    /// Every strip has its sister at the same place on the other side of the middle: the layer beside it in the stick both were sawn from, opened like a book.
    /// In the middle lies a pair of sisters or one single strip.
    /// </summary>
    BookMatched,

    /// <summary>From light to dark.</summary>
    Graduated,

    /// <summary>Two woods by turns.</summary>
    Alternating,

    /// <summary>One narrow strip of another wood in a panel of one wood.</summary>
    Accent,

    /// <summary>In any order that keeps neighbours apart.</summary>
    Free,
}
