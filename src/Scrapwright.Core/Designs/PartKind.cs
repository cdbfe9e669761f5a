namespace Scrapwright.Core.Designs;

/// <summary>Where a part comes from.</summary>
public enum PartKind
{
    /// <summary>Cut from a glue-up.</summary>
    Panel,

    /// <summary>Cut from one offcut.</summary>
    Solid,

    /// <summary>Cut from bought rod.</summary>
    Rod,
}
