namespace Scrapwright.Core.Pile;

/// <summary>What a stretch of an entry line tells.</summary>
public enum EntryPart
{
    /// <summary>What is written on the wood.</summary>
    Label,

    /// <summary>The species.</summary>
    Species,

    /// <summary>Size along the grain.</summary>
    Length,

    /// <summary>Size across the grain.</summary>
    Width,

    /// <summary>Thickness.</summary>
    Thickness,

    /// <summary>How many alike.</summary>
    Count,

    /// <summary>State of the wide faces.</summary>
    Faces,

    /// <summary>How the growth rings stand.</summary>
    Rings,

    /// <summary>Hollow across the width.</summary>
    Cup,

    /// <summary>Hollow along the length.</summary>
    Bow,

    /// <summary>A corner off the bench.</summary>
    Twist,

    /// <summary>A stretch to cut round.</summary>
    Defect,

    /// <summary>Anything else.</summary>
    Note,
}
