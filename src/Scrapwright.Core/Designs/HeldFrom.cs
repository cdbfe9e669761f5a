namespace Scrapwright.Core.Designs;

/// <summary>Where the thing that goes into an opening comes from.</summary>
public enum HeldFrom
{
    /// <summary>A part of the same product.</summary>
    SameGift,

    /// <summary>A part of another gift of the list.</summary>
    OtherGift,

    /// <summary>Described by sizes only; its wood is not known.</summary>
    Described,
}
