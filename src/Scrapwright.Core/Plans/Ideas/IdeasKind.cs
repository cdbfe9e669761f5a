namespace Scrapwright.Core.Plans.Ideas;

/// <summary>What a maker wants ideas about.</summary>
public enum IdeasKind
{
    /// <summary>What can be made.</summary>
    Gifts,

    /// <summary>Where one offcut serves best.</summary>
    Offcut,

    /// <summary>Which single purchase makes most gifts possible.</summary>
    Purchase,
}
