namespace Scrapwright.Core.Designs;

/// <summary>From how many panels the pieces of a set come.</summary>
public enum SetPanels
{
    /// <summary>From as many as save wood.</summary>
    Any,

    /// <summary>From one, so that all are alike.</summary>
    One,

    /// <summary>Each from its own and of other woods where the pile allows, so that each is different.</summary>
    Each,
}
